import * as z from 'zod';
import { basis, number, optionalText, sources, text } from './columns.ts';

/** Typical climates: monthly mean air temperature (°C), rain (mm) and 10 cm soil temperature (°C). */
export const row = z.strictObject({
  climate: text,
  hemisphere: z.enum(['north', 'south']),
  latitude: number,
  quantity: z.enum(['air', 'rain', 'soil']),
  jan: number,
  feb: number,
  mar: number,
  apr: number,
  may: number,
  jun: number,
  jul: number,
  aug: number,
  sep: number,
  oct: number,
  nov: number,
  dec: number,
  sources,
  basis,
  note: optionalText,
});

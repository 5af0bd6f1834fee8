import * as z from 'zod';
import { basis, number, optionalNumber, optionalText, sources, text } from './columns.ts';

export const row = z.strictObject({
  material: text,
  package: text,
  massKg: optionalNumber,
  usdLow: number,
  usdHigh: number,
  sources,
  basis,
  note: optionalText,
});

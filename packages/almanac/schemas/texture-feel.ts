import * as z from 'zod';
import { basis, number, optionalNumber, optionalText, sources, text } from './columns.ts';

/** Texture class by ribbon length and feel. */
export const row = z.strictObject({
  ribbon: text,
  from_mm: number,
  to_mm: optionalNumber,
  gritty: text,
  smooth: text,
  neither: text,
  sources,
  basis,
  note: optionalText,
});

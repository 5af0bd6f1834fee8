import * as z from 'zod';
import { basis, number, optionalNumber, optionalText, sources, text } from './columns.ts';

/** Bands of electrical conductivity of potting media by method; upper bounds belong to the band. */
export const row = z.strictObject({
  method: text,
  class: text,
  low: number,
  high: optionalNumber,
  unit: text,
  sources,
  basis,
  note: optionalText,
});

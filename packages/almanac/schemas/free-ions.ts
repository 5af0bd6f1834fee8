import * as z from 'zod';
import { basis, number, optionalNumber, optionalText, sources, text } from './columns.ts';

/** Activity of a free ion over its mineral: log10 = logAtZero + perPh · pH. What plants find moves far less. */
export const row = z.strictObject({
  element: text,
  ion: text,
  logAtZero: optionalNumber,
  perPh: number,
  sources,
  basis,
  note: optionalText,
});

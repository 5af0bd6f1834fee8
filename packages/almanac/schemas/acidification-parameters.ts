import * as z from 'zod';
import { basis, number, optionalNumber, optionalText, sources, text } from './columns.ts';

/** Figures the acidifying rules rest on. */
export const row = z.strictObject({
  key: text,
  value: number,
  low: optionalNumber,
  high: optionalNumber,
  unit: text,
  sources,
  basis,
  note: optionalText,
});

import * as z from 'zod';
import { basis, number, optionalNumber, optionalText, sources, text } from './columns.ts';

/** Shape of the buffer curve, its default height, and limits around it. */
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

import * as z from 'zod';
import { basis, number, optionalText, sources, text } from './columns.ts';

/** How far water pH in autumn lies below spring. */
export const row = z.strictObject({
  case: text,
  low: number,
  high: number,
  sources,
  basis,
  note: optionalText,
});

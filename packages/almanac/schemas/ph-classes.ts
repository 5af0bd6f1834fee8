import * as z from 'zod';
import { basis, optionalNumber, optionalText, sources, text } from './columns.ts';

/** Names of soil reaction; limits to one decimal, open at both ends of the scale. */
export const row = z.strictObject({
  name: text,
  low: optionalNumber,
  high: optionalNumber,
  sources,
  basis,
  note: optionalText,
});

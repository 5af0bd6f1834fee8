import * as z from 'zod';
import { basis, number, optionalNumber, optionalText, sources, text } from './columns.ts';

/** Published sampling depth (m) and number of cores. */
export const row = z.strictObject({
  target: text,
  from_depth: optionalNumber,
  to_depth: optionalNumber,
  cores_low: number,
  cores_high: optionalNumber,
  sources,
  basis,
  note: optionalText,
});

import * as z from 'zod';
import { basis, list, number, sources, text } from './columns.ts';

/** Ranges of soil properties by texture class, in the published units. */
export const row = z.strictObject({
  classes: list,
  property: text,
  low: number,
  high: number,
  unit: text,
  sources,
  basis,
});

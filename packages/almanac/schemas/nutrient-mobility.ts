import * as z from 'zod';
import { basis, optionalText, sources, text } from './columns.ts';

/** Whether a plant can move a nutrient from old leaves to young ones, and which leaves show a lack first. */
export const row = z.strictObject({
  nutrient: text,
  mobility: z.enum(['mobile', 'variable', 'immobile']),
  firstLeaves: text,
  sources,
  basis,
  note: optionalText,
});

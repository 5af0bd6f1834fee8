import * as z from 'zod';
import { basis, list, number, optionalText, sources, text } from './columns.ts';

/** How usable a nutrient is, or how great a danger, by pH 4.0 to 9.0 in steps of 0.5; 1 is the best of its own range, never a yield. */
export const row = z.strictObject({
  subject: text,
  series: z.enum(['classic', 'revised', 'organic', 'risk']),
  medium: z.enum(['mineral', 'organic']),
  values: list
    .transform((cells) => cells.map(Number))
    .refine((values) => values.length === 11 && values.every((value) => value >= 0 && value <= 1), 'eleven shares'),
  uncertainty: number,
  sources,
  basis,
  note: optionalText,
});

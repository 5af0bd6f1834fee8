import * as z from 'zod';
import { basis, optionalNumber, optionalText, sources, text } from './columns.ts';

/** pH beyond which a nutrient that is there may not be usable; verdicts are our own reading of the sources. */
export const row = z.strictObject({
  key: text,
  nutrient: text,
  medium: z.enum(['soil', 'pot']),
  below: optionalNumber,
  above: optionalNumber,
  verdict: z.enum(['locked']),
  sources,
  basis,
  note: optionalText,
});

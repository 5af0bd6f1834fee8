import * as z from 'zod';
import { basis, optionalText, sources, text } from './columns.ts';

export const row = z.strictObject({
  system: text,
  formula: text,
  unit: optionalText,
  /** Whether moisture is inside the published result, as the publication says. */
  moisture: optionalText,
  legalOrAssumed: optionalText,
  sources,
  basis,
  note: optionalText,
});

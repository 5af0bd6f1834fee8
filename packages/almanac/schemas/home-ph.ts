import * as z from 'zod';
import { basis, optionalText, sources, text } from './columns.ts';

/** Steps of a home slurry test. */
export const row = z.strictObject({
  step: text,
  action: text,
  sources,
  basis,
  note: optionalText,
});

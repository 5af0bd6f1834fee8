import * as z from 'zod';
import { basis, optionalText, sources, text } from './columns.ts';

/** UK texture classes as tests in %, tried in this order; sand from 0.06 mm. */
export const row = z.strictObject({
  class: text,
  rule: text,
  sources,
  basis,
  note: optionalText,
});

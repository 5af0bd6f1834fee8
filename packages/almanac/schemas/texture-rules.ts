import * as z from 'zod';
import { basis, optionalText, sources, text } from './columns.ts';

/** USDA texture classes as half-open tests in %, tried in this order. */
export const row = z.strictObject({
  code: text,
  class: text,
  rule: text,
  sources,
  basis,
  note: optionalText,
});

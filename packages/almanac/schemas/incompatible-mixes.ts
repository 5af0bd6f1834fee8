import * as z from 'zod';
import { basis, optionalText, sources, text } from './columns.ts';

export const row = z.strictObject({
  a: text,
  b: text,
  rule: text,
  why: optionalText,
  sources,
  basis,
});

import * as z from 'zod';
import { basis, optionalText, sources, text } from './columns.ts';

export const row = z.strictObject({
  test: text,
  rule: text,
  unit: optionalText,
  sources,
  basis,
  note: optionalText,
});

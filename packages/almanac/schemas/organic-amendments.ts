import * as z from 'zod';
import { basis, optionalText, sources, text } from './columns.ts';

export const row = z.strictObject({
  name: text,
  quantity: text,
  /** As printed: a number, a range or words. */
  value: text,
  unit: optionalText,
  sources,
  basis,
  note: optionalText,
});

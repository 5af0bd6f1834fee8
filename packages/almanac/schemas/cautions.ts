import * as z from 'zod';
import { basis, optionalText, sources, text } from './columns.ts';

export const row = z.strictObject({
  code: text,
  message: text,
  when: text,
  sources,
  basis,
  note: optionalText,
});

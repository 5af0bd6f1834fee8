import * as z from 'zod';
import { basis, number, optionalText, sources, text } from './columns.ts';

export const row = z.strictObject({
  form: z.enum(['ammonium', 'urea', 'ammonium nitrate', 'nitrate', 'map', 'dap']),
  title: text,
  /** Acid left per nitrogen when plants take all of it up. */
  k: number,
  published: text,
  sources,
  basis,
  note: optionalText,
});

import * as z from 'zod';
import { basis, number, optionalText, sources, text } from './columns.ts';

export const row = z.strictObject({
  level: z.enum(['talk', 'refer', 'no food', 'removal']),
  mgPerKg: number,
  meaning: text,
  /** Date from which the level is in force or was chosen. */
  since: z.iso.date(),
  sources,
  basis,
  note: optionalText,
});

import * as z from 'zod';
import { basis, optionalText, ph, sources, text } from './columns.ts';

export const row = z.strictObject({
  system: text,
  soil: z.enum(['mineral', 'peaty', 'organic', 'unlabelled']),
  optimum_ph: ph,
  target_ph: ph,
  sources,
  basis,
  note: optionalText,
});

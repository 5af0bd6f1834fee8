import * as z from 'zod';
import { basis, optionalText, ph, sources, text } from './columns.ts';

/** Lime-requirement buffers: pH before soil is added, and the lowest reading that makes sense. */
export const row = z.strictObject({
  method: text,
  name: text,
  start_ph: ph,
  lowest_ph: ph,
  sources,
  basis,
  note: optionalText,
});

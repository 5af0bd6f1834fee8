import * as z from 'zod';
import { basis, optionalText, sources, text } from './columns.ts';

/** Published yearly acid inputs and base removals, as printed (a figure or a range, with its own unit). */
export const row = z.strictObject({
  setting: text,
  value: text,
  unit: text,
  sources,
  basis,
  note: optionalText,
});

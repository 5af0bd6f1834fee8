import * as z from 'zod';
import { basis, optionalText, ph, sources, text } from './columns.ts';

/** pH of things people know, for teaching. */
export const row = z.strictObject({
  substance: text,
  ph,
  sources,
  basis,
  note: optionalText,
});

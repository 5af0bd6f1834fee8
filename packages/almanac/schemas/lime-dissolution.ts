import * as z from 'zod';
import { basis, optionalText, sources, text } from './columns.ts';

/** Published evidence on how fast lime dissolves, as printed. */
export const row = z.strictObject({
  setting: text,
  size_um: optionalText,
  value: optionalText,
  meaning: text,
  sources,
  basis,
  note: optionalText,
});

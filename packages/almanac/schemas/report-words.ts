import * as z from 'zod';
import { basis, list, optionalText, sources, text } from './columns.ts';

/** Words in cells and headers of laboratories' tables, and what each says. Compared without capitals. */
export const row = z.strictObject({
  kind: z.enum(['ph-method', 'buffer', 'texture', 'acid-fizz', 'blank', 'not-detected', 'broken', 'total', 'flag']),
  value: text,
  spellings: list,
  sources,
  basis,
  note: optionalText,
});

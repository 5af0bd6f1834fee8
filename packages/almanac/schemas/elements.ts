import * as z from 'zod';
import { basis, number, optionalText, sources, text } from './columns.ts';

export const row = z.strictObject({
  symbol: text,
  massGPerMol: number,
  sources,
  basis,
  note: optionalText,
});

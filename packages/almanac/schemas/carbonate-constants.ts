import * as z from 'zod';
import { basis, number, optionalText, sources, text } from './columns.ts';

/** log10 K(T) = c0 + c1 T + c2/T + c3 log10 T + c4/T², T in kelvin. */
export const row = z.strictObject({
  constant: z.enum(['KH', 'K1', 'K2', 'Ksp', 'Kw']),
  title: text,
  log_k_25: number,
  c0: number,
  c1: number,
  c2: number,
  c3: number,
  c4: number,
  sources,
  basis,
  note: optionalText,
});

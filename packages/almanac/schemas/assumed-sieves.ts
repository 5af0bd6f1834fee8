import * as z from 'zod';
import { basis, number, optionalText, sources, text } from './columns.ts';

/** Sieve curves assumed when a product names none: mass fraction finer than an opening. */
export const row = z.strictObject({
  grade: text,
  kind: z.enum(['lime', 'sulfur']),
  opening_mm: number,
  passing: number.refine((value) => value >= 0 && value <= 1, 'a mass fraction'),
  sources,
  basis,
  note: optionalText,
});

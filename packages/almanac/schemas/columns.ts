import * as z from 'zod';

/** Column kinds shared by every table. A CSV cell is text; an empty cell is a missing value. */
export const text = z.string().min(1);
export const optionalText = z
  .string()
  .transform((cell) => (cell === '' ? undefined : cell))
  .pipe(z.string().optional());
export const number = z
  .string()
  .regex(/^-?\d+(\.\d+)?([eE][-+]?\d+)?$/, 'must be a plain number')
  .transform(Number);
export const optionalNumber = z.union([z.literal('').transform(() => undefined), number]);
export const yesNo = z.enum(['yes', 'no', '']).transform((cell) => cell === 'yes');
/** Several values in one cell, separated by `;`. */
export const list = z.string().transform((cell) =>
  cell
    .split(';')
    .map((part) => part.trim())
    .filter((part) => part !== ''),
);
/** Citation keys, separated by `;`; the build checks that each resolves in `sources.csv`. */
export const sources = list.refine((keys) => keys.length > 0, 'every row names its source');
/** `read` seen in a publication; `memory` nobody could retrieve it; `derived` computed from cited figures; `judgement` ours. */
export const basis = z.enum(['read', 'memory', 'derived', 'judgement']);
export const ph = number.refine((value) => value >= 0 && value <= 14, 'a pH lies between 0 and 14');

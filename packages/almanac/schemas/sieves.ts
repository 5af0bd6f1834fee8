import * as z from 'zod';
import { basis, number, optionalText, sources } from './columns.ts';

export const row = z.strictObject({
  mesh: number,
  openingMm: number,
  /** `current` standard opening, or the one older tables print for the same sieve. */
  edition: z.enum(['current', 'older']),
  sources,
  basis,
  note: optionalText,
});

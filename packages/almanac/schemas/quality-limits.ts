import * as z from 'zod';
import { basis, number, optionalText, sources, text } from './columns.ts';

/** How often a soil day checks its meters, and how far a check may be off. */
export const row = z.strictObject({
  key: text,
  /** One in so many samples. */
  every: number,
  /** Largest difference that passes, pH units. */
  limit: number,
  sources,
  basis,
  note: optionalText,
});

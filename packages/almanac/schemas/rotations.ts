import * as z from 'zod';
import { basis, number, optionalText, sources, text } from './columns.ts';

/** Years a family stays away from a place where it grew. */
export const row = z.strictObject({
  key: text,
  /** Botanical family, or `any` for families without a row of their own. */
  family: text,
  /** Key of the disease that must be present for the row to hold; empty for always. */
  when: optionalText,
  /** The interval as printed. */
  published: text,
  /** The longer end, in years from one season to the next that is allowed. */
  years: number,
  reason: text,
  sources,
  basis,
  note: optionalText,
});

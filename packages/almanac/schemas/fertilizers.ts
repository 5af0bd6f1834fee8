import * as z from 'zod';
import { basis, number, optionalNumber, optionalText, sources, text } from './columns.ts';

export const row = z.strictObject({
  key: text,
  name: text,
  nPercent: optionalNumber,
  p2o5Percent: optionalNumber,
  k2oPercent: optionalNumber,
  sPercent: optionalNumber,
  caPercent: optionalNumber,
  mgPercent: optionalNumber,
  naPercent: optionalNumber,
  clPercent: optionalNumber,
  /** Minus is acid. */
  publishedKgCaco3Per100kg: number,
  pierreKgCaco3Per100kg: number,
  sources,
  basis,
  note: optionalText,
});

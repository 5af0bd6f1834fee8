import * as z from 'zod';
import { basis, number, optionalNumber, optionalText, sources, text } from './columns.ts';
import { rateUnit } from './sulfur-rates.ts';

/** The most that may be given at once or in a year. */
export const row = z.strictObject({
  key: text,
  material: text,
  use: text,
  value: number,
  unit: z.union([rateUnit, z.enum(['kg/m3', 'fl oz/100 gal'])]),
  /** Least time before the next. */
  monthsApart: optionalNumber,
  sources,
  basis,
  note: optionalText,
});

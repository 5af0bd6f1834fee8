import * as z from 'zod';
import { basis, number, optionalNumber, optionalText, sources, text } from './columns.ts';

/** Published equations between ways of reading pH: `intercept + slope x + per_ec EC + per_om OM` (or log10 x); EC in dS/m, OM in %. */
export const row = z.strictObject({
  id: text,
  from: text,
  to: text,
  form: z.enum(['linear', 'log']),
  intercept: number,
  slope: number,
  per_ec: optionalNumber,
  per_om: optionalNumber,
  sd: optionalNumber,
  condition: text,
  sources,
  basis,
  note: optionalText,
});

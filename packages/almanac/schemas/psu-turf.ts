import * as z from 'zod';
import { basis, number, ph, sources } from './columns.ts';

export const row = z.strictObject({
  acidity_meq_per_100g: number,
  target_ph: ph,
  lb_cce_per_1000sqft: number,
  sources,
  basis,
});

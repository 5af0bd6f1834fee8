import * as z from 'zod';
import { basis, optionalNumber, optionalText, sources, text } from './columns.ts';

/** LBC = intercept + per_oc_percent x OC + per_clay_percent x clay, in `unit` per pH; blank where the form is another. */
export const row = z.strictObject({
  id: text,
  region: text,
  n: optionalNumber,
  r2: optionalNumber,
  unit: z.enum(['cmolc/kg', 'mmol/kg', 'g CaCO3/kg', 'kg CaCO3/ha in 15 cm']),
  intercept: optionalNumber,
  per_oc_percent: optionalNumber,
  per_clay_percent: optionalNumber,
  equation_g_caco3_per_kg_per_ph: text,
  role: z.enum(['default', 'low-activity sands', 'cross-check', 'doubtful']),
  sources,
  basis,
  note: optionalText,
});

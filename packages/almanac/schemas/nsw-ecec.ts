import * as z from 'zod';
import { basis, number, optionalText, ph, sources } from './columns.ts';

/** Pure lime for 10 cm; both pH values in CaCl2. */
export const row = z.strictObject({
  ecec_cmol_per_kg: number,
  ph_cacl2_from: ph,
  ph_cacl2_to: ph,
  t_per_ha: number,
  suspect: z.enum(['yes', 'no']),
  sources,
  basis,
  note: optionalText,
});

import * as z from 'zod';
import { basis, number, optionalText, ph, sources } from './columns.ts';

export const row = z.strictObject({
  soil: z.enum(['sands', 'light', 'medium and clay']),
  use: z.enum(['arable', 'grass']),
  t_per_ha_per_ph: number,
  target_ph: ph,
  depth_cm: number,
  sources,
  basis,
  note: optionalText,
});

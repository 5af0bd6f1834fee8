import * as z from 'zod';
import { basis, number, optionalText, ph, sources } from './columns.ts';

/** Rates are for 8 in. */
export const row = z.strictObject({
  buffer_ph: ph,
  column: z.enum(['pure 7.0', 'ag-ground top', 'ag-ground 6.5', 'ag-ground 6.0', 'organic 5.2']),
  target_ph: ph,
  short_ton_per_acre: number,
  material: z.enum(['pure CaCO3', 'ag-ground limestone']),
  sources,
  basis,
  note: optionalText,
});

import * as z from 'zod';
import { basis, number, ph, sources } from './columns.ts';

/** Rates are for 6 in. */
export const row = z.strictObject({ buffer_ph: ph, target_ph: ph, short_ton_per_acre: number, sources, basis });

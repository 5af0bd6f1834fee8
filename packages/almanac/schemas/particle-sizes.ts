import * as z from 'zod';
import { basis, number, sources, text } from './columns.ts';

/** Limits of sand, silt and clay in each system, mm. */
export const row = z.strictObject({
  system: text,
  fraction: text,
  lower_mm: number,
  upper_mm: number,
  sources,
  basis,
});

import * as z from 'zod';
import { basis, number, sources } from './columns.ts';

/** Corners of the drawn USDA triangle, %. */
export const row = z.strictObject({
  vertex: number,
  clay: number,
  silt: number,
  sand: number,
  sources,
  basis,
});

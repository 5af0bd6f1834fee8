import * as z from 'zod';
import { basis, number, ph, sources } from './columns.ts';

/** pH of peat with lime (kg/m3) and a share of compost by volume. */
export const row = z.strictObject({
  lime: number,
  compost: number,
  ph,
  sources,
  basis,
});

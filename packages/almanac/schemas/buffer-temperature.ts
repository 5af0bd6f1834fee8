import * as z from 'zod';
import { basis, number, ph, sources, text } from './columns.ts';

/** True pH of calibration buffers by temperature in degrees Celsius. */
export const row = z.strictObject({
  set: text,
  temperature: number,
  nominal: ph,
  ph,
  sources,
  basis,
});

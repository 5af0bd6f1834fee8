import * as z from 'zod';
import { basis, number, optionalText, sources, text } from './columns.ts';

/** Bulk density by texture, material and medium, g/cm3. */
export const row = z.strictObject({
  kind: z.enum(['texture', 'material', 'medium', 'allowance']),
  name: text,
  low: number,
  high: number,
  sources,
  basis,
  note: optionalText,
});

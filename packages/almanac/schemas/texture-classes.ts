import * as z from 'zod';
import { basis, number, optionalText, sources, text } from './columns.ts';

/** A representative soil for each USDA class, %; organic carbon in %. */
export const row = z.strictObject({
  code: text,
  class: text,
  group: z.enum(['coarse', 'medium', 'fine']),
  sand: number,
  silt: number,
  clay: number,
  organic_carbon: number,
  sources,
  basis,
  note: optionalText,
});

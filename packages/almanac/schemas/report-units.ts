import * as z from 'zod';
import { basis, list, number, optionalText, sources, text, yesNo } from './columns.ts';

/** Units in headers and cells of laboratories' tables, by what is measured. */
export const row = z.strictObject({
  unit: text,
  quantity: z.enum(['share', 'charge', 'nutrient', 'conductivity', 'length', 'rate']),
  spellings: list,
  /** A figure in this unit times it is the figure in the quantity's own unit: %, meq/100 g, mg/kg, dS/m, cm, g/m². */
  multiply_by: number,
  /** Whether it counts by volume of soil, which needs the weight per volume first. */
  by_volume: yesNo,
  sources,
  basis,
  note: optionalText,
});

import * as z from 'zod';
import { basis, list, number, optionalNumber, optionalText, ph, sources, text } from './columns.ts';

/** Units in which sulfur rates are printed. */
export const rateUnit = z.enum(['lb/acre', 'lb/1000 sq ft', 'lb/100 sq ft', 'lb/10 sq ft', 'kg/ha', 'g/m2']);

/** Published rates of elemental sulfur (100 % S) that lower soil pH, value and unit as printed. */
export const row = z.strictObject({
  /** Citation key of the publication the row belongs to. */
  publication: text,
  /** Column heading as printed. */
  texture: text,
  /** Texture classes the column stands for; our reading, empty where the publication does not speak of texture. */
  classes: list,
  phFrom: ph,
  phTo: ph,
  rateLow: number,
  rateHigh: number,
  unit: rateUnit,
  /** Treated depth, when printed. */
  depthCm: optionalNumber,
  /** `per unit`: proportional to the pH drop; `cell`: for this pair of pH only. */
  rule: z.enum(['per unit', 'cell']),
  sources,
  basis,
  note: optionalText,
});

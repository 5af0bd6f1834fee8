import * as z from 'zod';
import { basis, list, number, optionalNumber, optionalText, sources, text } from './columns.ts';

export const row = z.strictObject({
  id: text,
  title: text,
  /** Where the calibration was made; empty when it is general chemistry. */
  regions: list,
  procedure: text,
  /** Treated depth as printed. */
  depth: optionalText,
  reference_depth_m: optionalNumber,
  /** Soil mass or density the rate assumes, as printed. */
  soil_mass: optionalText,
  soil_mass_kg_per_m2: optionalNumber,
  targets: optionalText,
  equation: text,
  output_unit: optionalText,
  domain: optionalText,
  /** k, the allowance for coarse or slow limestone already inside the published rate. */
  allowance: number,
  sd_matching: number,
  sd_foreign: number,
  /** Whether a dose may rest on it. */
  used: z.enum(['yes', 'no']),
  confidence: text,
  sources,
  basis,
  note: optionalText,
});

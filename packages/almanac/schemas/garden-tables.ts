import * as z from 'zod';
import { basis, number, optionalNumber, optionalText, sources, text } from './columns.ts';

export const row = z.strictObject({
  chart: text,
  /** Texture as the chart words it. */
  texture: text,
  /** Our reading of the chart's texture. */
  class: z.enum(['coarse', 'medium', 'fine']),
  /** `step` between two pH values, `per unit` of pH, `rate` for untested soil. */
  kind: z.enum(['step', 'per unit', 'rate']),
  ph_from: optionalNumber,
  ph_to: optionalNumber,
  value: number,
  unit: z.enum(['lb/100sqft', 'lb/1000sqft', 'g/m2']),
  depth_cm: optionalNumber,
  /** Whether the chart may be used as a cross-check. */
  used: z.enum(['yes', 'no']),
  sources,
  basis,
  note: optionalText,
});

import * as z from 'zod';
import { basis, number, optionalNumber, optionalText, sources, text } from './columns.ts';

/** Parameters of the pH forecast (`docs/model.md`), value and unit as published. */
export const row = z.strictObject({
  parameter: text,
  symbol: text,
  title: text,
  value: number,
  unit: text,
  /** How members of the ensemble differ: `log` sd of the natural logarithm, `normal` sd in the unit, `none` all alike. */
  spread_kind: z.enum(['log', 'normal', 'none']),
  spread: optionalNumber,
  low: optionalNumber,
  high: optionalNumber,
  sources,
  basis,
  note: optionalText,
});

import * as z from 'zod';
import { basis, number, optionalNumber, optionalText, sources, text } from './columns.ts';

/** How fast elemental sulfur turns to acid in soil, as published. */
export const row = z.strictObject({
  quantity: text,
  value: number,
  low: optionalNumber,
  high: optionalNumber,
  unit: text,
  condition: optionalText,
  sources,
  basis,
  note: optionalText,
});

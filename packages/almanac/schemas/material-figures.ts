import * as z from 'zod';
import { basis, optionalNumber, optionalText, sources, text } from './columns.ts';

export const row = z.strictObject({
  material: text,
  property: text,
  low: optionalNumber,
  high: optionalNumber,
  typical: optionalNumber,
  /** The figure as printed when it is not one number. */
  text: optionalText,
  unit: text,
  sources,
  basis,
  note: optionalText,
});

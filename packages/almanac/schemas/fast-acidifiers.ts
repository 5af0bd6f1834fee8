import * as z from 'zod';
import { basis, number, optionalNumber, optionalText, sources, text } from './columns.ts';

/** What takes the place of one kilogram of sulfur, by formula and as published. */
export const row = z.strictObject({
  material: text,
  /** Empty when the publication does not say which hydrate it means. */
  formula: optionalText,
  value: number,
  unit: z.enum(['kg/kg S', 'lb/10 sq ft']),
  how: z.enum(['formula', 'published', 'published cell']),
  phFrom: optionalNumber,
  phTo: optionalNumber,
  sources,
  basis,
  note: optionalText,
});

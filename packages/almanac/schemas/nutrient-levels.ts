import * as z from 'zod';
import { basis, optionalNumber, optionalText, sources, text } from './columns.ts';

/** Classes of a nutrient level by extractant, in the published unit; a class holds its lower bound. */
export const row = z.strictObject({
  nutrient: text,
  extractant: z.enum([
    'mehlich-3',
    'mehlich-3-index',
    'dtpa',
    'bray-p1',
    'olsen',
    'ammonium-acetate',
    'hot-water',
    'sulfate-s',
    'sme',
    'dtpa-sme',
    'tissue',
  ]),
  unit: text,
  class: text,
  low: optionalNumber,
  high: optionalNumber,
  /** What the class means for the gardener; the reading is ours. */
  meaning: z.enum(['short', 'marginal', 'enough', 'excess']),
  sources,
  basis,
  note: optionalText,
});

import * as z from 'zod';
import { basis, list, number, optionalNumber, optionalText, sources, text } from './columns.ts';

/** What may lie behind a sign on a plant. Weights and strengths are judgement; signs and pH limits carry the source. */
export const row = z.strictObject({
  key: text,
  name: text,
  kind: z.enum(['lack', 'excess', 'look-alike']),
  nutrient: optionalText,
  /** How common it is in gardens before anything was looked at, relative to the others. */
  weight: number,
  /** pH below or above which it is likelier, in soil and in pots, and how many times likelier. */
  below: optionalNumber,
  above: optionalNumber,
  potBelow: optionalNumber,
  potAbove: optionalNumber,
  phStrength: number,
  crops: list,
  /** Where alone it occurs: in pots, in soil, on brassicas. */
  only: z.enum(['pot', 'soil', 'brassica', '']),
  sources,
  basis,
  note: optionalText,
});

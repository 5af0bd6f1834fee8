import * as z from 'zod';
import { basis, optionalNumber, optionalText, sources, text, yesNo } from './columns.ts';

export const row = z.strictObject({
  system: text,
  title: text,
  /** Name of the published result. */
  index: text,
  /** Class bounds; an empty bound is open. With `cumulative`, `finerThanMm` is the screen whose % passing counts. */
  finerThanMm: optionalNumber,
  coarserThanMm: optionalNumber,
  meshPassed: optionalNumber,
  meshRetained: optionalNumber,
  cumulative: yesNo,
  factor: optionalNumber,
  /** `complete` can be computed; `partial` and `not computed` lack factors nobody could retrieve. */
  state: z.enum(['complete', 'partial', 'not computed']),
  horizon: optionalText,
  sources,
  basis,
  note: optionalText,
});

import * as z from 'zod';
import { basis, optionalNumber, optionalText, sources, text } from './columns.ts';

/** One plant as one publication gives it. `low` to `high` is what it calls best, `tolerates` what the plant stands or grows in. */
export const row = z.strictObject({
  name: text,
  botanical: text,
  low: optionalNumber,
  high: optionalNumber,
  toleratesLow: optionalNumber,
  toleratesHigh: optionalNumber,
  /** `container`: pour-through or saturated extract of soilless mix; `soil in KCl` reads lower than water. Never mix them. */
  medium: z.enum(['soil', 'container', 'soil in KCl']),
  sources,
  basis,
  note: optionalText,
});

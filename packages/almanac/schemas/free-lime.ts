import * as z from 'zod';
import { basis, number, optionalNumber, optionalText, sources, text } from './columns.ts';

/** What can be done with a limy soil, by % CaCO3. */
export const row = z.strictObject({
  class: text,
  from_pct: number,
  to_pct: optionalNumber,
  sources,
  basis,
  note: optionalText,
});

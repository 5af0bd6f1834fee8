import * as z from 'zod';
import { basis, optionalText, sources, text } from './columns.ts';

/** Names that laboratories give to columns, one a row. Compared without capitals, accents, blanks and signs. */
export const row = z.strictObject({
  name: text,
  /** Row of `report-columns`. */
  meaning: text,
  /** How the pH was read or which buffer, when the name says so; `water` without a ratio. */
  method: optionalText,
  /** Oxide in which the figure is given. */
  oxide: z.enum(['CaO', 'MgO', 'K2O', '']),
  sources,
  basis,
  note: optionalText,
});

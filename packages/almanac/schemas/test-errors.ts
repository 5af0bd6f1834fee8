import * as z from 'zod';
import { basis, number, optionalNumber, optionalText, sources, text, yesNo } from './columns.ts';

/** Standard deviation of one pH reading by instrument, of one core, and of a year without a test. `cores` is assumed when none are stated. */
export const row = z.strictObject({
  key: text,
  sd: number,
  cores: optionalNumber,
  dose: yesNo,
  sources,
  basis,
  note: optionalText,
});

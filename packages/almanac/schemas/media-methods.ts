import * as z from 'zod';
import { basis, optionalNumber, optionalText, sources, text } from './columns.ts';

/** Ways of testing a potting medium. */
export const row = z.strictObject({
  method: text,
  title: text,
  water: optionalNumber,
  wait_min: optionalNumber,
  sources,
  basis,
  note: optionalText,
});

import * as z from 'zod';
import { basis, optionalNumber, optionalText, sources, text } from './columns.ts';

/** Target pH of acid-loving crops, one publication a row; an empty limit is one the publication does not give. */
export const row = z.strictObject({
  crop: text,
  phLow: optionalNumber,
  phHigh: optionalNumber,
  aim: optionalNumber,
  sources,
  basis,
  note: optionalText,
});

import * as z from 'zod';
import { basis, list, optionalNumber, optionalText, sources, text } from './columns.ts';

/** Carbonate by fizz, % CaCO3: the published range, and the range and best guess used here. */
export const row = z.strictObject({
  kind: z.enum(['acid', 'vinegar']),
  class: text,
  appearance: list,
  published_low: optionalNumber,
  published_high: optionalNumber,
  low: optionalNumber,
  best: optionalNumber,
  high: optionalNumber,
  sources,
  basis,
  note: optionalText,
});

import * as z from 'zod';
import { basis, optionalText, sources, text } from './columns.ts';

/** Why a nutrient follows the pH: `key` names the sentence in the catalogue. */
export const row = z.strictObject({
  nutrient: text,
  key: text,
  sources,
  basis,
  note: optionalText,
});

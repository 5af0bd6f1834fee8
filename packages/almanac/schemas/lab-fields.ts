import * as z from 'zod';
import { basis, list, sources, text } from './columns.ts';

/** Fields of laboratory reports, with their other names. */
export const row = z.strictObject({
  field: text,
  meaning: text,
  synonyms: list,
  unit: text,
  sources,
  basis,
});

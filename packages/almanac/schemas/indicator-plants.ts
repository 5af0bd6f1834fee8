import * as z from 'zod';
import { basis, optionalNumber, optionalText, sources, text } from './columns.ts';

/** What folk say a weed tells of the pH, and what records of where it grows allow. */
export const row = z.strictObject({
  key: text,
  name: text,
  botanical: optionalText,
  claim: text,
  low: optionalNumber,
  high: optionalNumber,
  /** `none`: no use; `weak`: a faint hint; `several`: a hint only together with others of its kind. */
  reliability: z.enum(['none', 'weak', 'several']),
  lean: z.enum(['sour', 'sweet', '']),
  sources,
  basis,
  note: optionalText,
});

import * as z from 'zod';
import { basis, optionalNumber, optionalText, sources, text } from './columns.ts';

/** Published figures for containers: lime, acid, start and target pH, alkalinity, monitoring. */
export const row = z.strictObject({
  topic: text,
  subject: text,
  low: optionalNumber,
  high: optionalNumber,
  unit: text,
  sources,
  basis,
  note: optionalText,
});

import * as z from 'zod';
import { basis, optionalNumber, optionalText, sources, text } from './columns.ts';

export const row = z.strictObject({
  kind: z.enum(['conversion', 'load', 'band', 'warn', 'act', 'acid limit']),
  subject: text,
  low: optionalNumber,
  high: optionalNumber,
  value: optionalNumber,
  unit: text,
  sources,
  basis,
  note: optionalText,
});

import * as z from 'zod';
import { basis, number, optionalText, ph, sources, text } from './columns.ts';

/** pH of unlimed ingredients of potting media and usual lime, kg/m3. */
export const row = z.strictObject({
  component: text,
  low: ph,
  high: ph,
  lime_low: number,
  lime_high: number,
  sources,
  basis,
  note: optionalText,
});

import * as z from 'zod';
import { basis, number, optionalText, sources, text, yesNo } from './columns.ts';

/** `from` times `multiply_by` is `to`; `exact` factors follow from definitions and are printed to ten figures. */
export const row = z.strictObject({
  from: text,
  to: text,
  multiply_by: number,
  exact: yesNo,
  note: optionalText,
  sources,
  basis,
});

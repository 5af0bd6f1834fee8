import * as z from 'zod';
import { basis, number, optionalNumber, optionalText, sources, text, yesNo } from './columns.ts';

export const row = z.strictObject({
  key: text,
  name: text,
  formula: text,
  specificGravity: optionalNumber,
  percent: number,
  /** Acid given per mole at the end pH of about 5.8. */
  equivalentsPerMol: number,
  strength: number,
  strengthUnit: z.enum(['eq/L', 'meq/g']),
  dose: optionalNumber,
  doseUnit: optionalText,
  /** Whether Sorrel gives a dose to people at home. */
  home: yesNo,
  sources,
  basis,
  note: optionalText,
});

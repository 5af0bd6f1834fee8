import * as z from 'zod';
import { basis, number, optionalText, sources, text } from './columns.ts';

export const row = z.strictObject({
  name: text,
  formula: text,
  molarMassGPerMol: number,
  acidPerMol: number,
  acidKgCaco3PerKg: number,
  kgPerKgSulfur: number,
  sources,
  basis,
  note: optionalText,
});

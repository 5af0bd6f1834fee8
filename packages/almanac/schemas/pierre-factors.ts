import * as z from 'zod';
import { basis, number, optionalText, sources } from './columns.ts';

export const row = z.strictObject({
  element: z.enum(['N', 'S', 'Cl', 'P', 'Ca', 'Mg', 'K', 'Na']),
  kgCaco3PerKg: number,
  sign: z.enum(['acid', 'base']),
  sources,
  basis,
  note: optionalText,
});

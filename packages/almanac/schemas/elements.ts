import * as z from 'zod';
import { basis, number, optionalNumber, optionalText, sources, text } from './columns.ts';

/** Abridged standard atomic masses, g/mol; `charge` is that of the exchangeable cation in soil. */
export const row = z.strictObject({
  symbol: text,
  name: text,
  molar_mass: number,
  charge: optionalNumber,
  note: optionalText,
  sources,
  basis,
});

import type { Kilogram } from '../units/si.ts';

/** kg per mol of CaCl2·2H2O and CaCl2 (atomic weights; CHEM). */
export const CALCIUM_CHLORIDE: Readonly<Record<'CaCl2.2H2O' | 'CaCl2', Kilogram>> = {
  'CaCl2.2H2O': 0.14701,
  CaCl2: 0.11098,
};

/** Calcium chloride to weigh out, kg: 0.02 M needs 2.94 g of the dihydrate a litre (UF_PH). */
export const saltToWeigh = (molar: number, litres: number, salt: 'CaCl2.2H2O' | 'CaCl2' = 'CaCl2.2H2O'): Kilogram =>
  molar * litres * CALCIUM_CHLORIDE[salt];

/**
 * A water slurry of 1 part soil to `liquid` parts, with `added` parts of a salt solution stirred in.
 *
 * @returns parts of liquid to one of soil, and the strength of the salt in it
 */
export function addSalt(
  liquid: number,
  added: number,
  molar: number,
): { readonly liquid: number; readonly molar: number } {
  const whole = liquid + added;
  return { liquid: whole, molar: (added * molar) / whole };
}

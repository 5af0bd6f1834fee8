import type { Fraction, MolPerKg } from '../units/si.ts';
import type { SoilTest } from './soil-test.ts';

type Cations = Pick<SoilTest, 'calcium' | 'magnesium' | 'potassium' | 'sodium' | 'aluminium'>;

/** Sodium above this share of the exchange complex makes a sodic soil (HB60, from memory). */
export const SODIC: Fraction = 0.15;

/**
 * Calcium, magnesium, potassium and sodium together, mol_c/kg. Potassium and sodium are small and may be missing;
 * without calcium and magnesium there is no sum. A limed or limy soil gives too much: lime dissolves in the extract.
 */
export function baseSum(test: Cations): MolPerKg | undefined {
  if (test.calcium === undefined || test.magnesium === undefined) return undefined;
  return test.calcium + test.magnesium + (test.potassium ?? 0) + (test.sodium ?? 0);
}

/** Effective CEC: bases and exchangeable aluminium, mol_c/kg. Without an aluminium figure it is undefined. */
export function effectiveCec(test: Cations): MolPerKg | undefined {
  const bases = baseSum(test);
  return bases === undefined || test.aluminium === undefined ? undefined : bases + test.aluminium;
}

/** Aluminium's share of the effective CEC, 0 to 1. Means something only in sour soil, under about pH 5 in CaCl2. */
export function aluminiumSaturation(test: Cations): Fraction | undefined {
  const whole = effectiveCec(test);
  return whole === undefined || whole <= 0 || test.aluminium === undefined ? undefined : test.aluminium / whole;
}

/** Bases' share of the CEC, 0 to 1: as printed, else the sum over the CEC, never above 1. Depends on which CEC it is. */
export function baseSaturationOf(test: Cations & Pick<SoilTest, 'cec' | 'baseSaturation'>): Fraction | undefined {
  if (test.baseSaturation !== undefined) return test.baseSaturation;
  const bases = baseSum(test);
  return bases === undefined || test.cec === undefined || test.cec <= 0 ? undefined : Math.min(1, bases / test.cec);
}

/** Exchangeable sodium's share of the CEC, or of the effective CEC or the bases when no CEC is printed. 0 to 1. */
export function sodiumShare(test: Cations & Pick<SoilTest, 'cec'>): Fraction | undefined {
  const whole = test.cec ?? effectiveCec(test) ?? baseSum(test);
  return whole === undefined || whole <= 0 || test.sodium === undefined ? undefined : Math.min(1, test.sodium / whole);
}

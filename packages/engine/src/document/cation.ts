import { conversion } from '@sorrel/almanac/conversions';
import type { Fraction, KgPerM2, MolPerKg } from '../units/si.ts';

export type Cation = 'aluminium' | 'calcium' | 'magnesium' | 'potassium' | 'sodium';

const SYMBOL: Readonly<Record<Cation, string>> = {
  aluminium: 'Al',
  calcium: 'Ca',
  magnesium: 'Mg',
  potassium: 'K',
  sodium: 'Na',
};

/** Charge of an extractable cation given as weight for a weight of soil; equivalent weights from the almanac's conversions. */
export const chargeOfFraction = (cation: Cation, fraction: Fraction): MolPerKg => fraction * PER_FRACTION[cation];

const perFraction = (symbol: string): number => (1e6 * 0.01) / conversion(`cmolc/kg ${symbol}`, `mg/kg ${symbol}`);
const PER_FRACTION: Readonly<Record<Cation, number>> = {
  calcium: perFraction(SYMBOL.calcium),
  magnesium: perFraction(SYMBOL.magnesium),
  potassium: perFraction(SYMBOL.potassium),
  sodium: perFraction(SYMBOL.sodium),
  aluminium: perFraction(SYMBOL.aluminium),
};

/**
 * Charge of an extractable cation given as weight for an area of the layer laboratories mean when they print lb/acre:
 * 2,000,000 lb of soil an acre, so that 1 mg/kg is 2 lb/acre (conversions table).
 */
export function chargeOfMassPerArea(cation: Cation, perArea: KgPerM2): MolPerKg {
  const poundsPerAcre = (perArea * 1000) / conversion('lb/acre', 'g/m2');
  return chargeOfFraction(cation, (poundsPerAcre / conversion('mg/kg', 'lb/acre (6 2/3 in, 2e6 lb soil)')) * 1e-6);
}

import type { Fraction, KgPerM2, MolPerKg } from '../units/si.ts';

export type Cation = 'aluminium' | 'calcium' | 'magnesium' | 'potassium' | 'sodium';

/** mg/kg of each cation in 1 cmol_c/kg (COURSE_NOTES, read). */
const milligramsPerCentimole: Readonly<Record<Cation, number>> = {
  aluminium: 89.9,
  calcium: 200.4,
  magnesium: 121.5,
  potassium: 391,
  sodium: 229.9,
};

/** Soil in the layer that laboratories mean when they print lb/acre: 2,000,000 lb an acre (NOFA_APP, read), in kg/m². */
const acreFurrowSlice: KgPerM2 = 224.17;

/** Charge of an extractable cation given as weight for a weight of soil. */
export const chargeOfFraction = (cation: Cation, fraction: Fraction): MolPerKg =>
  (fraction * 1e6 * 0.01) / milligramsPerCentimole[cation];

/** Charge of an extractable cation given as weight for an area of the layer 2,000,000 lb an acre weigh. */
export const chargeOfMassPerArea = (cation: Cation, perArea: KgPerM2): MolPerKg =>
  chargeOfFraction(cation, perArea / acreFurrowSlice);

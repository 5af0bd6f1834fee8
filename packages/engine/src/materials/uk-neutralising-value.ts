import type { Fraction } from '../units/si.ts';

/** kg CaCO3 that neutralise as much as 1 kg CaO: 100.086 / 56.077. */
const CACO3_PER_CAO = 1.7848;

/**
 * Neutralising value as printed in the UK and the EU (kg CaO per kg) to kg CaCO3 per kg: `CCE = 1.7848 NV`.
 *
 * @param neutralisingValue kg CaO equivalent per kg, 0 to 1.4
 * @source UKNV
 */
export const fromCalciumOxide = (neutralisingValue: Fraction): number => neutralisingValue * CACO3_PER_CAO;

/** kg CaCO3 per kg to kg CaO equivalent per kg. Source: UKNV. */
export const toCalciumOxide = (equivalent: number): Fraction => equivalent / CACO3_PER_CAO;

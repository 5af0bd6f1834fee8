import type { Fraction, KgPerM2, Metre, MolPerM3, Ph } from '../units/si.ts';
import { BICARBONATE } from './carbonate.ts';
import { EQUIVALENT, P } from './parameters.ts';

/**
 * Base that drains away as bicarbonate, `L_HCO3 = D · min(KH K1 p/10^−pH, 0.0035 (p/0.01)^(1/3))`, kg CaCO3/m².
 *
 * @param drainage D, m of water
 * @param pCO2 p, atm (0.003 to 0.05)
 * Source: MODEL; PHREEQC constants.
 */
export function bicarbonateLeaching(ph: Ph, drainage: Metre, pCO2: number): KgPerM2 {
  const cap = alkalinityCap(pCO2);
  return drainage * 1000 * EQUIVALENT * Math.min((BICARBONATE * pCO2) / 10 ** -ph, cap);
}

/** Highest alkalinity of drainage, mol/L: water in balance with calcite (MODEL). */
export function alkalinityCap(pCO2: number): number {
  return P.alkalinityCap * Math.cbrt(pCO2 / 0.01);
}

/** Acid that drains away as hydrogen and aluminium, `L_Al = D (10^−pH + 3 K_Al 10^−3pH)`, kg CaCO3/m² (gibbsite, memory). */
export function aluminiumLeaching(ph: Ph, drainage: Metre): KgPerM2 {
  const h = 10 ** -ph;
  return drainage * 1000 * EQUIVALENT * (h + 3 * P.gibbsite * h ** 3);
}

/** Dissolved aluminium in balance with gibbsite, mol/L, `K_Al H³` (TEXT, memory). */
export function dissolvedAluminium(ph: Ph): number {
  return P.gibbsite * 10 ** (-3 * ph);
}

/**
 * Acid of a nitrogen feed, kg CaCO3 per kg N (positive is acid): `3.573 (k + f_L)`.
 *
 * @param charge k: +1 ammonium, 0 urea, organic or legume nitrogen, −1 nitrate, 0.5 ammonium phosphate
 * @param leached f_L, share lost as nitrate, 0 to 1
 * Source: CALC; reproduces the half-loss table of 5.4 and 1.8 (COR-N) at f_L 0.5.
 */
export function nitrogenAcid(charge: number, leached: Fraction): number {
  return P.acidPerN * (charge + leached);
}

/** Base given by irrigation water, kg CaCO3/m²: depth × alkalinity × 0.05004 (300 mm at 3 meq/L is 45 g/m²). */
export function waterAlkalinity(depth: Metre, alkalinity: MolPerM3): KgPerM2 {
  return depth * alkalinity * EQUIVALENT;
}

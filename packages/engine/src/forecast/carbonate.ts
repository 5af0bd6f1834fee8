import { type CarbonateConstantRow, carbonateConstant } from '@sorrel/almanac/carbonate-constants';
import type { Celsius, Ph } from '../units/si.ts';

type Name = CarbonateConstantRow['constant'];

/**
 * log10 of an equilibrium constant, `c0 + c1 T + c2/T + c3 log10 T + c4/T²`, T in kelvin.
 *
 * @param temperature 0 to 50 °C
 * Source: PHREEQC; polynomials after PB82 (from memory but for calcite).
 */
export function logK(name: Name, temperature: Celsius): number {
  const { c0, c1, c2, c3, c4 } = carbonateConstant(name);
  const t = temperature + 273.15;
  return c0 + c1 * t + c2 / t + c3 * Math.log10(t) + c4 / t ** 2;
}

/** Activity coefficient of charge z at ionic strength I (mol/L, up to 0.5) after Davies, `log γ = −A z² (√I/(1+√I) − 0.3 I)`. */
export function davies(charge: number, ionicStrength: number, temperature: Celsius): number {
  const t = temperature + 273.15;
  const dielectric = 87.74 - 0.4008 * temperature + 9.398e-4 * temperature ** 2 - 1.41e-6 * temperature ** 3;
  const a = 1.82483e6 * (dielectric * t) ** -1.5;
  const root = Math.sqrt(ionicStrength);
  return 10 ** (-a * charge ** 2 * (root / (1 + root) - 0.3 * ionicStrength));
}

export interface CalciteInput {
  readonly temperature: Celsius;
  /** Carbon dioxide of the gas, atm. */
  readonly pCO2: number;
  /** Calcium chloride in the water, mol/L: 0.01 in the laboratory's CaCl2 method. */
  readonly calciumChloride?: number;
}

export interface CalciteEquilibrium {
  readonly ph: Ph;
  /** Calcium, mol/L. */
  readonly calcium: number;
  /** Bicarbonate and carbonate as charge, mol/L. */
  readonly alkalinity: number;
}

/** Root of a falling function between two pH values, by halving. */
function falling(low: number, high: number, f: (ph: number) => number): number {
  let a = low;
  let b = high;
  for (let i = 0; i < 60; i++) {
    const middle = (a + b) / 2;
    if (f(middle) > 0) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}

/**
 * pH of water that stands in balance with calcite and a gas:
 * charge balance `2 Ca + H = HCO3 + 2 CO3 + OH + Cl` with Davies activities, no ion pairs (they move pH by < 0.006).
 * Source: PHREEQC constants; MODEL.
 */
export function calciteEquilibrium(input: CalciteInput): CalciteEquilibrium {
  const { temperature, pCO2 } = input;
  const chloride = 2 * (input.calciumChloride ?? 0);
  const bicarbonate = 10 ** (logK('KH', temperature) + logK('K1', temperature)) * pCO2;
  const carbonate = bicarbonate * 10 ** logK('K2', temperature);
  const ksp = 10 ** logK('Ksp', temperature);
  const kw = 10 ** logK('Kw', temperature);
  let strength = 1.5 * chloride + 0.001;
  let ph = 7;
  let calcium = 0;
  let alkalinity = 0;
  for (let i = 0; i < 40; i++) {
    const g1 = davies(1, strength, temperature);
    const g2 = davies(2, strength, temperature);
    const ions = (at: number) => {
      const h = 10 ** -at;
      const co3 = carbonate / h ** 2;
      return { h: h / g1, hco3: bicarbonate / h / g1, co3: co3 / g2, oh: kw / h / g1, ca: ksp / co3 / g2 };
    };
    ph = falling(3, 11, (at) => {
      const { h, hco3, co3, oh, ca } = ions(at);
      return 2 * ca + h - hco3 - 2 * co3 - oh - chloride;
    });
    const { h, hco3, co3, oh, ca } = ions(ph);
    calcium = ca;
    alkalinity = hco3 + 2 * co3;
    strength = 0.5 * (4 * ca + 4 * co3 + h + hco3 + oh + chloride);
  }
  return { ph, calcium, alkalinity };
}

/** Plain approximation at 25 °C, `pH = 5.930 − (2/3) log10 p`: 0.02 to 0.05 below the full answer (MODEL). */
export function calcitePhApproximation(pCO2: number): Ph {
  return 5.93 - (2 / 3) * Math.log10(pCO2);
}

/** pH of pure water under carbon dioxide, `H² = KH K1 p`, from given or 25 °C constants. Source: ENVCHEM, PHREEQC. */
export function carbonicWaterPh(pCO2: number, logKH = logK('KH', 25), logK1 = logK('K1', 25)): Ph {
  return -0.5 * (logKH + logK1 + Math.log10(pCO2));
}

/** `KH · K1` at 25 °C: bicarbonate (mol/L) = this × p / H. */
export const BICARBONATE = 10 ** (carbonateConstant('KH').log_k_25 + carbonateConstant('K1').log_k_25);

import { carbonateConstants } from '@sorrel/almanac/carbonate-constants';
import { describe, expect, it } from 'vitest';
import { calciteEquilibrium, calcitePhApproximation, carbonicWaterPh, davies, logK } from './carbonate.ts';

describe('carbonate equilibrium', () => {
  it('has the constants of the public data base at 25 °C (PHREEQC; Kw from memory)', () => {
    for (const { constant, log_k_25 } of carbonateConstants)
      expect(Math.abs(logK(constant, 25) - log_k_25)).toBeLessThan(constant === 'Kw' ? 0.006 : 0.002);
  });

  it('gives the pH of open water over calcite', () => {
    // Worked textbook value for air: pH 8.3 at 10^-3.5 atm (common textbook figure, from memory).
    expect(calciteEquilibrium({ temperature: 25, pCO2: 10 ** -3.5 }).ph).toBeCloseTo(8.28, 1);
    // Calcium of that water about 0.47-0.49 mmol/L (same).
    expect(calciteEquilibrium({ temperature: 25, pCO2: 10 ** -3.5 }).calcium * 1000).toBeCloseTo(0.48, 1);
  });

  it('stays close to the plain formula, which lies 0.02 to 0.05 below (dynamics 2)', () => {
    for (const pCO2 of [0.0004, 0.001, 0.01, 0.1]) {
      const gap = calciteEquilibrium({ temperature: 25, pCO2 }).ph - calcitePhApproximation(pCO2);
      expect(gap).toBeGreaterThan(0.01);
      expect(gap).toBeLessThan(0.06);
    }
  });

  it('makes rain sour as published: pH 5.7 with rounded constants (ENVCHEM)', () => {
    expect(carbonicWaterPh(10 ** -3.5, -1.5, -6.4)).toBeCloseTo(5.7, 1);
  });

  it('has activity coefficients of the Davies equation: 0.89 at 0.01 M for one charge (textbook, from memory)', () => {
    expect(davies(1, 0.01, 25)).toBeCloseTo(0.9, 1);
    expect(davies(2, 0.01, 25)).toBeCloseTo(davies(1, 0.01, 25) ** 4, 6);
  });
});

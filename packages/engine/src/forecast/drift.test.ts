import { describe, expect, it } from 'vitest';
import { aluminiumLeaching, bicarbonateLeaching, nitrogenAcid, waterAlkalinity } from './drift.ts';

const perHectare = (kgPerM2: number) => kgPerM2 * 1e4;

describe('yearly drift', () => {
  it('leaches base as worked out for 250 mm at 0.01 atm (MODEL): 19, 60, 189 kg/ha at pH 6, 6.5, 7, then capped near 440', () => {
    expect(perHectare(bicarbonateLeaching(6, 0.25, 0.01))).toBeCloseTo(19, 0);
    expect(perHectare(bicarbonateLeaching(6.5, 0.25, 0.01))).toBeCloseTo(59.9, 0);
    expect(perHectare(bicarbonateLeaching(7, 0.25, 0.01))).toBeCloseTo(189, 0);
    expect(perHectare(bicarbonateLeaching(8, 0.25, 0.01))).toBeCloseTo(438, 0);
  });

  it('counts water: 300 mm at 3 meq/L is 45 g/m² (dynamics 5)', () => {
    expect(waterAlkalinity(0.3, 3)).toBeCloseTo(0.045, 3);
  });

  it('reproduces the half-loss labels of urea 1.8 and ammonium sulfate 5.4 per kg N (COR-N)', () => {
    expect(nitrogenAcid(0, 0.5)).toBeCloseTo(1.8, 1);
    expect(nitrogenAcid(1, 0.5)).toBeCloseTo(5.4, 1);
  });

  it('loses acid only where it is very sour', () => {
    expect(aluminiumLeaching(6, 0.25)).toBeLessThan(1e-4);
    expect(perHectare(aluminiumLeaching(3.8, 0.25))).toBeGreaterThan(100);
  });
});

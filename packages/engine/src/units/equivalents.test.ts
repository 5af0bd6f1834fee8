import { cite, isSource } from '@sorrel/almanac/sources';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createRecorder, gaps } from '../derivation/derivation.ts';
import {
  ACRE_SOIL,
  acidityRatio,
  type Cation,
  carbonateOf,
  chargeOf,
  chargeOfCarbonate,
  equivalentMass,
  formFactor,
  massFractionOf,
  perArea,
  perSoilMass,
  soilFromExtract,
} from './equivalents.ts';

describe('equivalents', () => {
  it('turns charge into weight (COURSE_NOTES: 4 cmolc Ca is 800 ppm with a rounded weight, 2 of Al 180)', () => {
    expect(Math.abs(massFractionOf('Ca', 0.04) * 1e6 - 800)).toBeLessThan(2);
    expect(Math.abs(massFractionOf('Al', 0.02) * 1e6 - 180)).toBeLessThan(0.5);
  });

  it('works an extract back to the soil (COURSE_NOTES: 50 g, 200 mL, 25-fold, 4 ppm is 400 mg/kg or 1.02 cmolc K)', () => {
    const potassium = soilFromExtract(0.004, 200e-6, 0.05, 25);
    expect(potassium * 1e6).toBeCloseTo(400, 9);
    expect(chargeOf('K', potassium) * 100).toBeCloseTo(1.02, 2);
    expect(() => soilFromExtract(0.004, 200e-6, 0, 25)).toThrow(RangeError);
  });

  it('goes there and back for every cation', () => {
    const cations: readonly Cation[] = ['Ca', 'Mg', 'K', 'Na', 'Al', 'H'];
    fc.assert(
      fc.property(fc.constantFrom(...cations), fc.double({ min: 1e-6, max: 1, noNaN: true }), (cation, charge) => {
        expect(chargeOf(cation, massFractionOf(cation, charge)) / charge).toBeCloseTo(1, 12);
      }),
    );
    expect(() => equivalentMass('Xx')).toThrow(RangeError);
  });

  it('counts ppm as pounds an acre by the convention (osu-circ587: 50 ppm is 100 lb)', () => {
    expect(perArea(50e-6) / (ACRE_SOIL / 2e6)).toBeCloseTo(100, 9);
    expect(perSoilMass(perArea(50e-6))).toBeCloseTo(50e-6, 12);
  });

  it('answers acid with carbonate (WASAND: 0.19 kmol of acid takes 9.5 kg)', () => {
    expect(carbonateOf(190)).toBeCloseTo(9.5, 1);
    expect(chargeOfCarbonate(carbonateOf(190))).toBeCloseTo(190, 9);
  });

  it('knows the published forms both ways and says when it does not', () => {
    expect(formFactor('P', 'P2O5')).toBe(2.2914);
    expect(formFactor('P2O5', 'P')).toBeCloseTo(0.43641, 5);
    expect(formFactor('K', 'K')).toBe(1);
    expect(formFactor('P', 'K2O')).toBeUndefined();
  });

  it('is ten times as acid a unit lower (msstate-ph)', () => {
    expect(acidityRatio(5, 6)).toBeCloseTo(10, 9);
    expect(acidityRatio(5, 7)).toBeCloseTo(100, 9);
    expect(acidityRatio(7, 5)).toBeCloseTo(0.01, 9);
  });

  it('records how a charge came about, and costs the same figure without', () => {
    const recorder = createRecorder();
    expect(chargeOf('Ca', 8e-4, recorder)).toBe(chargeOf('Ca', 8e-4));
    expect(gaps(recorder.derivation())).toEqual([]);
    for (const source of recorder.derivation().steps.flatMap(({ sources }) => sources))
      expect(isSource(source), cite(source)).toBe(true);
  });
});

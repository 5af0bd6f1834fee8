import { describe, expect, it } from 'vitest';
import { createRecorder, gaps } from '../../derivation/derivation.ts';
import { effectiveFromIndex, limeIndex, poundsEqualToTon } from './lime-index.ts';
import { effectiveProportion } from './western-australia.ts';

describe('quality index', () => {
  // WILIME: TFE 70, CCE 92, moisture 2 give 1,260 lb/ton as printed.
  it('gives the Iowa example', () => {
    const index = limeIndex('IA', { neutralisingValue: 0.92, efficiency: 0.7, moisture: 0.02 });
    expect(Math.abs(index.value - 1260)).toBeLessThan(3);
    expect(index).toMatchObject({ name: 'ECCE', unit: 'lb/ton', includesMoisture: true });
  });

  // MOENM: pure fine stone scores 800.
  it('gives the Missouri scale', () => {
    expect(limeIndex('MO', { neutralisingValue: 1, efficiency: 1, moisture: 0.1 }).value).toBe(800);
  });

  it('leaves moisture out where the publication does, and goes back to the effective share', () => {
    for (const system of ['OH', 'MN', 'IA', 'MO', 'OR', 'MI', 'AL', 'NY_CCA', 'KS', 'TX']) {
      const recorder = createRecorder();
      const dry = limeIndex(system, { neutralisingValue: 0.9, efficiency: 0.8, moisture: 0 }, recorder);
      const damp = limeIndex(system, { neutralisingValue: 0.9, efficiency: 0.8, moisture: 0.1 });
      expect(damp.value < dry.value, system).toBe(damp.includesMoisture);
      expect(effectiveFromIndex(system, dry.value), system).toBeCloseTo(0.72, 12);
      expect(gaps(recorder.derivation())).toEqual([]);
    }
    expect(limeIndex('OH', { neutralisingValue: 1, efficiency: 1, moisture: 0 }).includesMoisture).toBe(true);
    expect(limeIndex('MI', { neutralisingValue: 1, efficiency: 1, moisture: 0 }).includesMoisture).toBe(false);
  });

  // NCLIME: standard lime is 90 % CCE.
  it('gives the pounds equal to a ton of standard lime', () => {
    expect(poundsEqualToTon(0.9)).toBe(2000);
    expect(poundsEqualToTon(0.6)).toBeCloseTo(3000, 9);
  });

  // WALIME: 48 % finest with NV 90.5 is 43.4; 8 % of 0.5 to 1 mm with NV 72.1 is 2.9.
  it('multiplies the value of each class in Western Australia', () => {
    const fine = { share: 0.48, neutralisingValue: 0.905, factor: 1 };
    const coarse = { share: 0.08, neutralisingValue: 0.721, factor: 0.5 };
    expect(effectiveProportion([fine]) * 100).toBeCloseTo(43.4, 1);
    expect(effectiveProportion([coarse]) * 100).toBeCloseTo(2.9, 1);
    expect(effectiveProportion([fine, coarse])).toBeCloseTo(
      effectiveProportion([fine]) + effectiveProportion([coarse]),
      12,
    );
  });
});

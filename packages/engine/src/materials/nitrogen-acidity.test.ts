import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createRecorder, gaps } from '../derivation/derivation.ts';
import { nitrogenAcidity } from './nitrogen-acidity.ts';

describe('acid of fertilizer nitrogen', () => {
  // NRCCA37: 1.8 lb CaCO3 per lb urea N, 5.4 for ammonium sulfate; STRIPN maxima 3.6 and 7.2; NSWN nitrate −3.6.
  it('gives the published factors', () => {
    expect(-nitrogenAcidity(1, 'urea', 0.5)).toBeCloseTo(1.8, 1);
    expect(-nitrogenAcidity(1, 'ammonium', 0.5)).toBeCloseTo(5.4, 1);
    expect(-nitrogenAcidity(1, 'urea', 1)).toBeCloseTo(3.6, 1);
    expect(Math.abs(nitrogenAcidity(1, 'ammonium', 1) + 7.2)).toBeLessThan(0.06);
    expect(nitrogenAcidity(1, 'nitrate', 0)).toBeCloseTo(3.6, 1);
  });

  it('never gets less sour when more is leached', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }), (a, b) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        return nitrogenAcidity(1, 'urea', high) <= nitrogenAcidity(1, 'urea', low);
      }),
    );
  });

  it('shows its working and wants a share', () => {
    const recorder = createRecorder();
    nitrogenAcidity(0.01, 'ammonium', 0.3, recorder);
    expect(gaps(recorder.derivation())).toEqual([]);
    expect(() => nitrogenAcidity(1, 'urea', 50)).toThrow(/between 0 and 1/);
  });
});

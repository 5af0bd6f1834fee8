import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { between, forward } from './buffer-curve.ts';
import {
  mixStartPh,
  peatCompostPh,
  soillessCapacity,
  soillessCapacityByVolume,
  soillessCurve,
  startPhOf,
} from './soilless.ts';

describe('soilless media', () => {
  it('follow the titration of peat with pure lime', () => {
    // Trial: 0, 1.2, 2.4, 3.6 g/L gave pH 4.5, 5.2, 5.6, 6.1 (COMPEAT).
    const curve = soillessCurve();
    for (const [lime, ph] of [
      [1.2, 5.2],
      [2.4, 5.6],
      [3.6, 6.1],
    ] as const)
      expect(Math.abs(forward(curve, 4.5, lime) - ph)).toBeLessThan(0.25);
    expect(between(curve, 4.5, 6.1)).toBeCloseTo(2.2 * 1.6, 9);
  });

  it('weigh the same by mass as by volume', () => {
    expect(soillessCapacity(150).median * 150).toBeCloseTo(soillessCapacityByVolume.median, 12);
  });

  it('give the measured pH of peat, lime and compost', () => {
    // TAYLOR_2016.
    expect(peatCompostPh(1.2, 0)).toBeCloseTo(5.2, 9);
    expect(peatCompostPh(1.2, 0.4)).toBeCloseTo(6.9, 9);
    expect(peatCompostPh(0, 0.2)).toBeCloseTo(5.6, 9);
    expect(peatCompostPh(3.6, 0.4)).toBeUndefined();
    expect(peatCompostPh(1, 0.6)).toBeUndefined();
    expect(peatCompostPh(-1, 0)).toBeUndefined();
  });

  it('start between their ingredients', () => {
    // Peat 3 to 4, coir 5.5 to 6.5, composted bark 5 to 6.5 (MAHER_2008); compost 6 to 8 (TAYLOR_2016).
    expect(startPhOf('peat')).toEqual({ low: 3, high: 4 });
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(share, share, share, share, (peat, coir, bark, compost) => {
        fc.pre(peat + coir + bark + compost > 0.01);
        const { mean } = mixStartPh({ peat, coir, bark, compost });
        expect(mean).toBeGreaterThanOrEqual(3.5 - 1e-9);
        expect(mean).toBeLessThanOrEqual(7 + 1e-9);
      }),
    );
    expect(() => mixStartPh({})).toThrow(RangeError);
  });
});

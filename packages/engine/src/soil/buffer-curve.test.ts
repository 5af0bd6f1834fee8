import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  baseContent,
  between,
  capacityAt,
  curveShape,
  forward,
  leastCapacityThrough,
  phAt,
  solidCurve,
} from './buffer-curve.ts';

const beta0 = fc.double({ min: 0.0002, max: 0.02, noNaN: true });
const ph = fc.double({ min: 3.2, max: 7.8, noNaN: true });
const carbonate = fc.double({ min: 0, max: 0.2, noNaN: true });

describe('the buffer curve', () => {
  it('steepens away from the middle as the fitted form does', () => {
    // beta/beta0 as tabulated with the closed form (MODEL): 4 1.54, 4.5 1.25, 5 1.07, 6 1.03, 6.5 1.16, 7 1.41, 7.5 1.79.
    const curve = solidCurve(1, 0.45);
    const table = { 4: 1.54, 4.5: 1.25, 5: 1.07, 6: 1.03, 6.5: 1.16, 7: 1.41, 7.5: 1.79 };
    for (const [at, ratio] of Object.entries(table)) expect(capacityAt(curve, Number(at))).toBeCloseTo(ratio, 1);
  });

  it('has an inverse', () => {
    fc.assert(
      fc.property(beta0, ph, (least, at) => {
        const curve = solidCurve(least, 0.45);
        expect(phAt(curve, baseContent(curve, at))).toBeCloseTo(at, 9);
      }),
    );
  });

  it('rises with pH, never less steeply than beta0', () => {
    fc.assert(
      fc.property(beta0, ph, fc.double({ min: 0.01, max: 2, noNaN: true }), (least, at, step) => {
        const curve = solidCurve(least, 0.45);
        const rise = baseContent(curve, at + step) - baseContent(curve, at);
        expect(rise).toBeGreaterThanOrEqual(least * step * (1 - 1e-9));
        expect(capacityAt(curve, at)).toBeGreaterThanOrEqual(least);
      }),
    );
  });

  it('comes back where it was when the same base is added and taken away', () => {
    fc.assert(
      fc.property(beta0, ph, ph, (least, from, to) => {
        const curve = solidCurve(least, 0.45);
        const base = between(curve, from, to);
        expect(forward(curve, from, base)).toBeCloseTo(to, 8);
        expect(forward(curve, forward(curve, from, base), -base)).toBeCloseTo(from, 8);
        expect(between(curve, to, from)).toBeCloseTo(-base, 12);
      }),
    );
  });

  it('spends acid on the whole carbonate store first', () => {
    fc.assert(
      fc.property(beta0, carbonate, fc.double({ min: 4, max: 7.5, noNaN: true }), (least, store, to) => {
        const limy = solidCurve(least, 0.45, store);
        const bare = solidCurve(least, 0.45, 0);
        expect(between(limy, curveShape.plateau, to)).toBeCloseTo(between(bare, curveShape.plateau, to) - store, 12);
        expect(forward(limy, 8.2, between(limy, 8.2, to))).toBeCloseTo(store > 0 ? to : to, 6);
        expect(forward(limy, 7.9, -store * 0.99)).toBe(7.9);
      }),
    );
  });

  it('cannot be limed past the plateau', () => {
    fc.assert(
      fc.property(beta0, ph, fc.double({ min: 0, max: 1, noNaN: true }), (least, at, base) => {
        expect(forward(solidCurve(least, 0.45), at, base)).toBeLessThanOrEqual(curveShape.plateau);
      }),
    );
    const curve = solidCurve(0.002, 0.45);
    expect(between(curve, 6, 9)).toBe(between(curve, 6, curveShape.plateau));
    expect(between(curve, 8, 9)).toBe(0);
    expect(forward(curve, 8.2, 0.01)).toBe(8.2);
  });

  it('can be laid through any published requirement', () => {
    fc.assert(
      fc.property(beta0, ph, fc.double({ min: 0.1, max: 2, noNaN: true }), (least, from, step) => {
        const to = Math.min(curveShape.plateau, from + step);
        fc.pre(to > from);
        const base = between(solidCurve(least, 0.45), from, to);
        expect(leastCapacityThrough(base, from, to) / least).toBeCloseTo(1, 6);
      }),
    );
    expect(() => leastCapacityThrough(0.001, 6, 6)).toThrow(RangeError);
  });
});

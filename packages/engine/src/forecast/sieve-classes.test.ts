import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lookUp } from './kernel-state.ts';
import { lossTable } from './loss-table.ts';
import { curveLeft, shareLeft, sizeClasses } from './sieve-classes.ts';

const um = 1e-6;

describe('shrinking grains', () => {
  it('fits the efficiencies of sieve fractions in peat with one loss of 72 um in 7 days (HUA07)', () => {
    const reacted = (from: number, to: number) => 1 - shareLeft({ from: from * um, to: to * um }, 72 * um);
    expect(reacted(850, 2000)).toBeCloseTo(0.13, 1);
    expect(reacted(250, 850)).toBeCloseTo(0.4, 1);
    expect(reacted(75, 150)).toBeCloseTo(0.97, 1);
    expect(reacted(45, 75)).toBeCloseTo(1, 4);
  });

  it('is the mean of (1 − x/d)³ over log d, found numerically too', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 1000, noNaN: true }),
        fc.double({ min: 1.01, max: 10, noNaN: true }),
        fc.double({ min: 0, max: 1.2, noNaN: true }),
        (from, ratio, share) => {
          const to = from * ratio;
          const loss = share * to;
          let sum = 0;
          const n = 4000;
          for (let i = 0; i < n; i++) sum += Math.max(0, 1 - loss / (from * ratio ** ((i + 0.5) / n))) ** 3;
          expect(shareLeft({ from, to }, loss)).toBeCloseTo(sum / n, 4);
        },
      ),
    );
  });

  it('reads a sieve curve in any order and keeps all mass', () => {
    const classes = sizeClasses([
      { opening: 0.00025, passing: 0.4 },
      { opening: 0.00236, passing: 0.95 },
    ]);
    expect(classes.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
    expect(() =>
      sizeClasses([
        { opening: 0.001, passing: 0.5 },
        { opening: 0.0001, passing: 0.6 },
      ]),
    ).toThrow(RangeError);
  });

  it('is tabled to 0.001 and falls all the way', () => {
    const classes = sizeClasses([
      { opening: 0.002, passing: 0.9 },
      { opening: 0.00025, passing: 0.4 },
      { opening: 0.000075, passing: 0.2 },
    ]);
    const table = lossTable(classes);
    let before = 1;
    for (let i = 0; i <= 3000; i++) {
      const loss = (table.end * 1.1 * i) / 3000;
      const now = lookUp(table.left, 0, 1 / table.end, loss);
      expect(Math.abs(now - curveLeft(classes, loss))).toBeLessThan(1e-3);
      expect(now).toBeLessThanOrEqual(before + 1e-12);
      before = now;
    }
  });
});

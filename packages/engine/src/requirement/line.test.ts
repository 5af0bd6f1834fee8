import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lineOf, valueAt } from './line.ts';

describe('reading between printed rows', () => {
  const line = lineOf([
    [6, 3],
    [5, 9],
    [7, 1],
  ]);

  it('gives the rows themselves, the straight line between, and nothing outside', () => {
    expect([5, 6, 7].map((x) => valueAt(line, x))).toEqual([9, 3, 1]);
    expect(valueAt(line, 5.5)).toBeCloseTo(6, 12);
    expect(valueAt(line, 4.9)).toBeNaN();
    expect(valueAt(line, 7.1)).toBeNaN();
    expect(valueAt(line, Number.NaN)).toBeNaN();
    expect(valueAt(lineOf([]), 1)).toBeNaN();
    expect(valueAt(lineOf([[2, 5]]), 2)).toBe(5);
  });

  it('never leaves the neighbouring rows', () => {
    fc.assert(
      fc.property(fc.double({ min: 5, max: 7, noNaN: true }), (x) => {
        const value = valueAt(line, x);
        expect(value).toBeLessThanOrEqual(x < 6 ? 9 : 3);
        expect(value).toBeGreaterThanOrEqual(x < 6 ? 3 : 1);
      }),
    );
  });
});

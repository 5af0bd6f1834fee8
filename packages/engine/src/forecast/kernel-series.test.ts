import fc from 'fast-check';
import { expect, it } from 'vitest';
import { evenPart, logOfRatio, oddPart, reachOf } from './kernel-series.ts';

it('the series give the logarithm and the exponential that Math gives, as far as they reach', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.2, max: 3, noNaN: true }),
      fc.double({ min: -1, max: 1, noNaN: true }),
      (w, part) => {
        const s = part * reachOf(w);
        const log = logOfRatio(s);
        expect(Math.abs(log - Math.log1p((2 * s) / (1 - s)))).toBeLessThan(1.2e-11);
        const u = Math.LN10 * w * log;
        const even = evenPart(u * u);
        const odd = oddPart(u, u * u);
        expect(Math.abs((even + odd) / Math.exp(u) - 1)).toBeLessThan(4e-12);
        expect(Math.abs((even - odd) / Math.exp(-u) - 1)).toBeLessThan(4e-12);
      },
    ),
    { numRuns: 500 },
  );
});

it('reaches at most 1/64 pH and, for narrow curves, a ratio of which the series is still good', () => {
  for (const w of [0.3, 1, 1.6, 2.2]) expect(w * logOfRatio(reachOf(w))).toBeLessThanOrEqual(1 / 64 + 1e-6);
});

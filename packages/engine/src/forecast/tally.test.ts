import fc from 'fast-check';
import { expect, it } from 'vitest';
import { drainQuantiles } from './quantiles.ts';
import { ABOVE, BELOW, createTally, shareMarked, tallyWeek } from './tally.ts';

const ENDS = { low: 6, high: 7, safeLow: 5.5, safeHigh: 7.25 };

it('counts the same as going through the members one by one, and finds their quantiles as sorting does', () => {
  fc.assert(
    fc.property(
      fc.array(fc.array(fc.double({ min: 2, max: 11, noNaN: true }), { minLength: 40, maxLength: 40 }), {
        minLength: 1,
        maxLength: 4,
      }),
      fc.double({ min: -0.1, max: 0.1, noNaN: true }),
      (weeks, slope) => {
        const count = 40;
        const tally = createTally(count);
        tally.members.fill(slope, count, 2 * count);
        const ph = Float32Array.from(weeks.flat());
        const seen = weeks.map((_, t) =>
          Array.from({ length: count }, (__, m) => (ph[t * count + m] as number) + t * slope),
        );
        const ever = (test: (at: number) => boolean, upTo: number) =>
          Array.from({ length: count }, (_, m) => seen.slice(0, upTo).some((week) => test(week[m] as number))).filter(
            Boolean,
          ).length;
        const within = (at: number) => at >= ENDS.low && at <= ENDS.high;
        for (const [t, week] of seen.entries()) {
          tallyWeek(tally, ph, t * count, t, ENDS);
          expect(tally.inside).toBe(week.filter(within).length);
          expect(tally.been).toBe(ever(within, t + 1));
          const out = new Float64Array(3);
          drainQuantiles(tally.cells, [0.1, 0.5, 1], count, out);
          drainQuantiles(tally.retestCells, [0.5], count, new Float64Array(1));
          const sorted = [...week].sort((a, b) => a - b);
          // A cell is 1/256 pH wide.
          for (const [i, rank] of [4, 20, 40].entries())
            expect(Math.abs((out[i] as number) - (sorted[rank - 1] as number))).toBeLessThan(1 / 256 + 1e-9);
          expect(tally.cells.every((here) => here === 0)).toBe(true);
        }
        expect(shareMarked(tally, ABOVE)).toBeCloseTo(ever((at) => at > ENDS.safeHigh, weeks.length) / count, 12);
        expect(shareMarked(tally, BELOW)).toBeCloseTo(ever((at) => at < ENDS.safeLow, weeks.length) / count, 12);
      },
    ),
    { numRuns: 60 },
  );
});

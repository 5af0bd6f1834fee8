import { area, line } from 'd3-shape';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bandPath, linePath } from './paths.ts';

/** The numbers of a path, in order. */
const numbers = (path: string | null) => (path ?? '').match(/-?[\d.]+(e-?\d+)?/g)?.map(Number) ?? [];

describe('paths of the forecast', () => {
  it('are drawn', () => {
    expect(linePath([0, 10, 20.04], [5, 6.25, 7])).toBe('M0,5L10,6.3L20,7');
    expect(bandPath([0, 10], [5, 6], [1, 2])).toBe('M0,1L10,2L10,6L0,5Z');
    expect([linePath([], []), bandPath([], [], [])]).toEqual(['', '']);
  });

  it('go where d3-shape goes, to a tenth of a pixel', () => {
    const y = fc.double({ min: -500, max: 500, noNaN: true });
    fc.assert(
      fc.property(fc.array(fc.tuple(y, y, y), { minLength: 2, maxLength: 60 }), (rows) => {
        const [xs, lows, highs] = [0, 1, 2].map((at) => rows.map((row) => row[at] as number)) as [
          number[],
          number[],
          number[],
        ];
        const ours = [...numbers(linePath(xs, lows)), ...numbers(bandPath(xs, lows, highs))];
        const theirs = [
          ...numbers(
            line<number[]>(
              (row) => row[0] ?? 0,
              (row) => row[1] ?? 0,
            )(rows),
          ),
          ...numbers(
            area<number[]>()
              .x((row) => row[0] ?? 0)
              .y1((row) => row[2] ?? 0)
              .y0((row) => row[1] ?? 0)(rows),
          ),
        ];
        expect(ours).toHaveLength(theirs.length);
        for (const [at, value] of ours.entries()) expect(Math.abs(value - (theirs[at] as number))).toBeLessThan(0.052);
      }),
    );
  });
});

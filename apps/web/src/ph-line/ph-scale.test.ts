import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type PhMarks, phScale, rowGeometry } from './ph-scale.ts';

const row = fc.record({
  present: fc.option(
    fc.record({
      mean: fc.double({ min: 2, max: 11, noNaN: true }),
      sd: fc.double({ min: 0.01, max: 2, noNaN: true }),
    }),
    { nil: undefined },
  ),
  low: fc.double({ min: 3, max: 7, noNaN: true }),
  high: fc.double({ min: 7.01, max: 9, noNaN: true }),
  aim: fc.option(fc.double({ min: 3, max: 9, noNaN: true }), { nil: undefined }),
});

describe('the shared pH axis', () => {
  it('runs from 4 to 8 when nothing lies outside', () => {
    const scale = phScale([{ low: 6, high: 6.8, present: { mean: 5.3, sd: 0.15 } }]);
    expect([scale.low, scale.high]).toEqual([4, 8]);
    expect(scale.ticks).toEqual([4, 5, 6, 7, 8]);
    expect([scale.at(4), scale.at(6), scale.at(8)]).toEqual([0, 50, 100]);
  });

  it('holds every value of every row', () => {
    fc.assert(
      fc.property(fc.array(row, { maxLength: 8 }), (rows: PhMarks[]) => {
        const scale = phScale(rows);
        for (const { present, low, high, aim } of rows)
          for (const value of [present?.mean, low, high, aim])
            if (value !== undefined) expect(value >= scale.low && value <= scale.high).toBe(true);
      }),
    );
  });

  it('draws inside the axis, the smear around the mark, the arrow from the mark', () => {
    fc.assert(
      fc.property(row, (marks: PhMarks) => {
        const drawn = rowGeometry(marks, phScale([marks]));
        for (const { from, width } of [...drawn.smears, ...(drawn.wanted ? [drawn.wanted] : [])]) {
          expect(from).toBeGreaterThanOrEqual(0);
          expect(width).toBeGreaterThanOrEqual(0);
          expect(from + width).toBeLessThanOrEqual(100 + 1e-9);
        }
        const [wide, , narrow] = drawn.smears;
        if (wide && narrow && drawn.mark !== undefined) {
          expect(wide.width).toBeGreaterThanOrEqual(narrow.width);
          expect(narrow.from).toBeLessThanOrEqual(drawn.mark);
          expect(narrow.from + narrow.width).toBeGreaterThanOrEqual(drawn.mark);
        }
        if (drawn.arrow !== undefined) {
          expect(drawn.arrow.from).toBe(drawn.mark);
          expect(drawn.arrow.way).toBe(drawn.arrow.to > drawn.arrow.from ? 'right' : 'left');
        }
      }),
    );
  });

  it('draws no bracket for plants that share no pH, and no arrow without a plan', () => {
    const scale = phScale([]);
    const drawn = rowGeometry({ low: 6.5, high: 5, present: { mean: 6, sd: 0.2 } }, scale);
    expect(drawn.wanted).toBeUndefined();
    expect(drawn.arrow).toBeUndefined();
    expect(rowGeometry({ low: 6, high: 7, aim: 6.5 }, scale).arrow).toBeUndefined();
  });

  it('smears over the middle 95 % of a normal distribution', () => {
    // 1.96 standard deviations: any table of the normal distribution.
    const [wide] = rowGeometry({ low: 5, high: 7, present: { mean: 6, sd: 0.25 } }, phScale([])).smears;
    expect(wide?.width).toBeCloseTo((2 * 1.96 * 0.25 * 100) / 4);
  });
});

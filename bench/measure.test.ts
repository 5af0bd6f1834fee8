import fc from 'fast-check';
import { median as witness } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { inTurns, median, share } from './measure.ts';

describe('measuring', () => {
  it('finds the median that simple-statistics finds', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: -1e9, max: 1e9, noNaN: true }), { minLength: 1 }), (values) => {
        expect(median(values)).toBeCloseTo(witness(values), 6);
      }),
    );
    expect(() => median([])).toThrow(RangeError);
  });

  it('runs both tasks equally often and in turns', async () => {
    const order: string[] = [];
    const { ratio } = await inTurns(
      () => order.push('ours'),
      () => order.push('theirs'),
      4,
    );
    expect(order.filter((who) => who === 'ours').length).toBe(5);
    expect(order.slice(0, 4)).toEqual(['ours', 'theirs', 'theirs', 'ours']);
    expect(ratio).toBeGreaterThan(0);
  });
});

describe('the value that a share of all do not pass', () => {
  // Nearest rank: of 20 values the 95th percentile is the 19th.
  it('is the nearest rank', () => {
    const values = Array.from({ length: 20 }, (_, index) => 20 - index);
    expect(share(values, 0.95)).toBe(19);
    expect(share(values, 0.5)).toBe(10);
    expect(share([3], 0.95)).toBe(3);
    expect(() => share([], 0.5)).toThrow(RangeError);
  });
});

import fc from 'fast-check';
import { median as witness } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { inTurns, median } from './measure.ts';

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

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LEAST_GAP, nearestTarget, targetWithin } from './targets.ts';

describe('choosing the published target', () => {
  const published = [6, 6.5, 6.8];

  it('takes the nearest that lies above the present pH', () => {
    expect(nearestTarget(published, 6.4, 5)).toBe(6.5);
    expect(nearestTarget(published, 6.4, 6.45)).toBe(6.8);
    expect(nearestTarget(published, 5.4, 5.2)).toBe(6);
    expect(nearestTarget(published, 5.5, 6.3)).toBe(6.5);
    expect(nearestTarget(published, 7, 6.75)).toBeUndefined();
  });

  it('takes the lower of two equally near', () => {
    expect(nearestTarget([6, 6.5], 6.25, 5)).toBe(6);
  });

  it('keeps to the limits of a method that takes any target, and to its top once the wanted one is passed', () => {
    expect(targetWithin(5.6, 7.2, 6.3, 5)).toBe(6.3);
    expect(targetWithin(5.6, 7.2, 7.5, 5)).toBe(7.2);
    expect(targetWithin(5.6, 7.2, 6.3, 6.4)).toBe(7.2);
    expect(targetWithin(5.5, 6.5, 6.3, 6.45)).toBeUndefined();
  });

  it('never gives a target within the error of one reading', () => {
    const ph = fc.double({ min: 3, max: 9, noNaN: true });
    fc.assert(
      fc.property(ph, ph, (wanted, present) => {
        for (const target of [nearestTarget(published, wanted, present), targetWithin(5, 7, wanted, present)])
          if (target !== undefined) expect(target - present).toBeGreaterThan(LEAST_GAP - 1e-6);
      }),
    );
  });
});

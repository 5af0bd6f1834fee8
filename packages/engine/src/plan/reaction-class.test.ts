import { phClasses } from '@sorrel/almanac/ph-classes';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { reactionClass } from './reaction-class.ts';

describe('reactionClass', () => {
  // Soil survey classes (ssm-classes, read).
  it.each([
    [3.4, 'ultra acid'],
    [4.4, 'extremely acid'],
    [5.5, 'strongly acid'],
    [6.0, 'moderately acid'],
    [6.6, 'neutral'],
    [7.3, 'neutral'],
    [8.4, 'moderately alkaline'],
    [9.1, 'very strongly alkaline'],
  ])('calls %s %s', (ph, name) => expect(reactionClass(ph)).toBe(name));

  it('rounds to one decimal, half up, so that no pH falls between two classes', () => {
    expect(reactionClass(6.05)).toBe('slightly acid');
    expect(reactionClass(6.04)).toBe('moderately acid');
    expect(reactionClass(5.55)).toBe('moderately acid');
  });

  it('never turns more acid as the pH rises', () => {
    const order = phClasses.map((row) => row.name);
    const ph = fc.double({ min: 0, max: 14, noNaN: true });
    fc.assert(
      fc.property(ph, ph, (a, b) => {
        const [low, high] = a < b ? [a, b] : [b, a];
        expect(order.indexOf(reactionClass(low))).toBeLessThanOrEqual(order.indexOf(reactionClass(high)));
      }),
    );
  });

  it('refuses what is not a pH', () => {
    expect(() => reactionClass(-1)).toThrow(RangeError);
    expect(() => reactionClass(Number.NaN)).toThrow(RangeError);
  });
});

import { findPlant, plants } from '@sorrel/almanac/plants';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createRecorder, gaps } from '../derivation/derivation.ts';
import { fit, fitWord, limitsOf, plantNotes, plantRangeOf, sharedRange } from './plant-range.ts';

const named = (name: string) => {
  const row = findPlant(name);
  if (row === undefined) throw new Error(`${name} is not in the almanac`);
  return plantRangeOf(row);
};
const anyRange = fc.constantFrom(...plants.map(plantRangeOf));
const anyPh = fc.double({ min: 3, max: 10, noNaN: true });

describe('fit', () => {
  it('is 1 inside, 0.3 at the limit, 0 beyond, and straight between', () => {
    // Spinach by fao-crop-db: best 6.0 to 7.5, stands 5.3 to 8.3.
    const spinach = { low: 6, high: 7.5, toleratesLow: 5.3, toleratesHigh: 8.3 };
    expect(fit(6, spinach)).toBe(1);
    expect(fit(7.5, spinach)).toBe(1);
    expect(fit(5.3, spinach)).toBeCloseTo(0.3, 12);
    expect(fit(5.65, spinach)).toBeCloseTo(0.65, 12);
    expect(fit(8.3, spinach)).toBeCloseTo(0.3, 12);
    expect(fit(5.29, spinach)).toBe(0);
    expect(fit(8.31, spinach)).toBe(0);
  });

  it('takes one unit beyond the best range where nobody gives a limit, and says so', () => {
    const recorder = createRecorder();
    expect(fit(4.75, { low: 5.5, high: 6.5 }, recorder)).toBeCloseTo(0.475, 12);
    expect(gaps(recorder.derivation())).toEqual([]);
    expect(recorder.derivation().steps[0]?.note).toMatch(/one pH unit/);
  });

  it('agrees with the word and never rises away from the best range', () => {
    fc.assert(
      fc.property(anyRange, anyPh, anyPh, (range, a, b) => {
        const word = fitWord(a, range);
        expect(fit(a, range) === 1).toBe(word === 'inside optimum');
        expect(fit(a, range) === 0).toBe(word === 'too acid' || word === 'too alkaline');
        const middle = (range.low + range.high) / 2;
        if (a >= middle && b >= a) expect(fit(b, range)).toBeLessThanOrEqual(fit(a, range));
        if (a <= middle && b <= a) expect(fit(b, range)).toBeLessThanOrEqual(fit(a, range));
      }),
    );
  });
});

describe('sharedRange', () => {
  it('is the part all ranges have in common', () => {
    fc.assert(
      fc.property(fc.array(anyRange, { minLength: 1, maxLength: 6 }), anyPh, (ranges, ph) => {
        const shared = sharedRange(ranges);
        const inAll = ranges.every((range) => ph >= range.low && ph <= range.high);
        expect(ph >= shared.low && ph <= shared.high).toBe(inAll);
        expect(shared.conflicts.length > 0).toBe(shared.low > shared.high);
      }),
    );
  });

  it('names the pairs that cannot live together', () => {
    const shared = sharedRange([named('highbush blueberry'), named('tomato'), named('asparagus')]);
    expect(shared.conflicts).toEqual([
      { a: 'Blueberry, highbush', b: 'Tomato' },
      { a: 'Blueberry, highbush', b: 'Asparagus' },
    ]);
    expect(() => sharedRange([])).toThrow(RangeError);
  });
});

describe('plantRangeOf', () => {
  it('keeps the range for pots beside the one for the ground', () => {
    expect(named('pansy').container).toEqual({ low: 5.4, high: 6.2 });
    expect(named('tomato').container).toBeUndefined();
  });

  it('widens the limits only where a source is silent', () => {
    expect(limitsOf(named('tomato'))).toEqual({ low: 5, high: 7.5 });
    expect(limitsOf({ low: 5, high: 6 })).toEqual({ low: 4, high: 7 });
  });

  it('says what is from memory, assumed or in dispute', () => {
    const codes = (name: string) => plantNotes(findPlant(name) as NonNullable<ReturnType<typeof findPlant>>);
    expect(codes('dahlia').map((note) => note.code)).toEqual(['plan.plant-memory', 'plan.plant-limits-assumed']);
    expect(codes('kale').map((note) => note.code)).toEqual(['plan.plant-sources-differ']);
    expect(codes('tomato')).toEqual([]);
  });
});

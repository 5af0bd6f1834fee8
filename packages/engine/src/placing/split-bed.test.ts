import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { splitBed } from './split-bed.ts';
import { plant } from './testing.ts';

const plants = fc.array(
  fc
    .tuple(fc.integer({ min: 40, max: 70 }), fc.integer({ min: 3, max: 15 }))
    .map(([low, wide]) => ({ low: low / 10, high: (low + wide) / 10 })),
  { minLength: 1, maxLength: 7 },
);

describe('splitBed', () => {
  it('gives every plant one group with a pH all of it calls best, in as few groups as trying all finds', () => {
    fc.assert(
      fc.property(plants, (ranges) => {
        const all = ranges.map(({ low, high }, at) => plant(`p${at}`, low, high));
        const { groups } = splitBed(all);
        for (const { low, high } of groups) expect(low).toBeLessThanOrEqual(high);
        expect(groups.flatMap((group) => group.plants).sort()).toEqual(all.map(({ name }) => name).sort());
        expect(groups.length).toBe(fewest(all));
      }),
      { numRuns: 200, seed: 3 },
    );
  });

  it('keeps plants together that can live together', () => {
    const { groups, messages } = splitBed([plant('a', 6, 7), plant('b', 6.5, 7.5)]);
    expect(groups).toEqual([{ plants: ['a', 'b'], low: 6.5, high: 7 }]);
    expect(messages).toEqual([]);
  });
});

/** Fewest pH values that hit all ranges, by trying ever more of the ends. */
function fewest(plants: readonly { readonly low: number; readonly high: number }[]): number {
  const ends = plants.map(({ high }) => high);
  const hits = (points: readonly number[]) =>
    plants.every(({ low, high }) => points.some((point) => low <= point && point <= high));
  const choose = (count: number, from: number, chosen: readonly number[]): boolean =>
    count === 0 ? hits(chosen) : ends.slice(from).some((end, at) => choose(count - 1, from + at + 1, [...chosen, end]));
  for (let count = 1; ; count++) if (choose(count, 0, [])) return count;
}

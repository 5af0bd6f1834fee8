import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { recommend } from '../plan/recommend.ts';
import { movesOf } from './moves.ts';
import { bed, settings } from './testing.ts';

const at = (...values: number[]) => values.map((ph) => ({ low: ph, high: ph }));
const wanted = at(4.5, 5, 5.5, 6, 6.5, 7, 7.5);
const costs = (ph: number, area: number) => movesOf(bed('a', ph, area), wanted, [], settings);

describe('movesOf', () => {
  it('costs nothing here, ever more away from here on both sides, and in step with the area', () => {
    fc.assert(
      fc.property(fc.integer({ min: 45, max: 71 }), fc.integer({ min: 1, max: 20 }), (tenths, area) => {
        const { open, present } = costs(tenths / 10, area);
        const here = open.findIndex(({ direction }) => direction === 'none');
        expect(open[here]).toMatchObject({ ph: present, currency: 0, material: 0, months: 0 });
        open.forEach((move, at) => {
          const further = at < here ? open[at - 1] : open[at + 1];
          if (further !== undefined) expect(further.currency).toBeGreaterThan(move.currency);
        });
        for (const [at, move] of costs(tenths / 10, 2 * area).open.entries())
          expect(move.currency).toBeCloseTo(2 * (open[at]?.currency ?? Number.NaN), 9);
      }),
      { numRuns: 60 },
    );
  });

  it('comes to the need that the plan of the place works out for the same pH', () => {
    const place = bed('a', 5.2, 7);
    const { open } = movesOf(place, at(6.5), [], settings);
    const plan = recommend({ ...place, target: { low: 6.5, high: 7, aim: 6.5 } }, [], settings);
    expect(open.at(-1)?.currency).toBeCloseTo(7 * (plan.requirement?.best ?? Number.NaN), 9);
  });

  it('counts the mix of pots by its volume', () => {
    const pots = bed('pots', undefined, 1, {
      kind: 'container',
      situation: 'container',
      medium: 'soilless',
      volume: 0.3,
    });
    const tested = bed('pots', 5, 1).tests.map((test) => ({
      ...test,
      ph: { value: 5, method: 'media-extract' as const },
    }));
    const { open } = movesOf({ ...pots, tests: tested }, at(5.8), [], settings);
    const double = movesOf({ ...pots, volume: 0.6, tests: tested }, at(5.8), [], settings);
    expect(open).toHaveLength(2);
    expect(double.open[1]?.currency).toBeCloseTo(2 * (open[1]?.currency ?? Number.NaN), 9);
    expect(movesOf(pots, at(5, 6), [], settings).open.map(({ currency }) => currency)).toEqual([0, 0]);
  });

  it('closes the ways that are not safe or not practical, and says why', () => {
    const place = bed('a', 7.3, 4);
    const test = place.tests[0];
    if (test === undefined) throw new Error('no test');
    const with_ = (more: object) => movesOf({ ...place, tests: [{ ...test, ...more }] }, wanted, [], settings);
    expect(with_({ carbonate: 0.05 }).noLower?.code).toBe('placing.free-lime');
    expect(with_({ lead: 300e-6 }).noLower?.code).toBe('placing.lead');
    expect(with_({}).noLower?.code).toBe('placing.fizz-first');
    expect(with_({ carbonate: 0 }).open.some(({ direction }) => direction === 'lower')).toBe(true);
    expect(with_({ instrument: 'strip' }).open).toHaveLength(1);
    // Sulfur for clay two units down is far above six yearly dressings.
    const clay = { name: 'clay', parts: { sand: 0.2, silt: 0.2, clay: 0.6 }, basis: 'class' } as const;
    const heavy = movesOf({ ...place, texture: clay, tests: [{ ...test, carbonate: 0 }] }, at(4.5), [], settings);
    expect(heavy.noLower?.code).toBe('placing.too-many-dressings');
  });
});

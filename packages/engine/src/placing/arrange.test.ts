import { findPlant } from '@sorrel/almanac/plants';
import loadHighs from 'highs';
import { beforeAll, describe, expect, it } from 'vitest';
import { gaps } from '../derivation/derivation.ts';
import { plantRangeOf } from '../plan/plant-range.ts';
import { say } from '../units/say.ts';
import { arrange } from './arrange.ts';
import type { Arrangement } from './arrangement.ts';
import { highsSolver } from './highs.ts';
import type { Solver } from './solver.ts';
import { bed, input, plant } from './testing.ts';

let solver: Solver;
beforeAll(async () => {
  solver = highsSolver(await loadHighs());
});

const blueberry = plant('blueberry', 4.5, 5.5);
const cabbage = plant('cabbage', 6.5, 7.5);
const bean = plant('bean', 5.8, 7);
const grows = ({ places }: Arrangement, place: string, season = 1): string[] =>
  (places.find((each) => each.place === place)?.seasons[season - 1] ?? []).map((each) => each.plant);
const saidIn = (list: readonly { readonly code: string }[]): string[] => list.map(({ code }) => code);

describe('an arrangement', () => {
  it('is never worse than plant by plant, and says that it is not proven, when the solver is stopped at once', () => {
    const stopped: Solver = (model) => {
      const found = solver(model);
      // The worst that may be held: a solution without the proof, at the highest cost there is.
      const dear = solver({ ...model, cost: model.cost.map((each) => -each) });
      return { ...found, status: 'stopped', bound: 0, values: dear.values, objective: dear.objective };
    };
    const garden = input({
      places: [bed('sour', 5, 3), bed('sweet', 6.8, 3)],
      wishes: [
        { plant: cabbage, area: 2 },
        { plant: bean, area: 1 },
      ],
    });
    const result = arrange(garden, stopped, { runnerUp: false });
    expect(result.proven).toBe(false);
    expect(result.greedy.currency).toBe(0);
    expect(result.figures.currency).toBe(0);
    expect(saidIn(result.messages)).toContain('placing.not-proven');
  });

  it('puts acid-lovers on sour ground and moves nothing, and says whom to keep apart', () => {
    const result = arrange(
      input({
        places: [bed('sour', 5, 3), bed('sweet', 6.8, 3)],
        wishes: [
          { plant: cabbage, area: 2 },
          { plant: blueberry, area: 2 },
        ],
      }),
      solver,
      { explain: true },
    );
    expect(grows(result, 'sour')).toEqual(['blueberry']);
    expect(grows(result, 'sweet')).toEqual(['cabbage']);
    expect(result.figures.currency).toBe(0);
    expect(saidIn(result.apart)).toEqual(['placing.apart-acid-lovers']);
    expect(say(result.apart[0] as (typeof result.apart)[number], 'metric')).toMatch(/acid-lovers: cabbage/);
    expect(gaps(result.derivation ?? { steps: [] })).toEqual([]);
  });

  it('says what the choice saves against the runner-up, and shows how the figure came about', () => {
    const result = arrange(
      input({
        places: [bed('near', 6.2, 3), bed('far', 5.2, 3)],
        wishes: [{ plant: cabbage, area: 3 }],
        products: [],
      }),
      solver,
      { explain: true },
    );
    expect(result.proven).toBe(true);
    expect(grows(result, 'near')).toEqual(['cabbage']);
    expect(result.places[0]?.move?.direction).toBe('raise');
    expect(result.runnerUp?.saved.currency).toBeGreaterThan(0);
    expect(result.runnerUp?.saved.material).toBeGreaterThan(0);
    expect(result.runnerUp?.places.find(({ place }) => place === 'far')?.move?.direction).toBe('raise');
    expect(gaps(result.derivation ?? { steps: [] })).toEqual([]);
    expect(result.derivation?.steps.at(-1)?.value).toBeCloseTo(result.figures.currency, 6);
  });

  it('keeps perennials that stay and what is fixed, and moves the soil for them', () => {
    const result = arrange(
      input({
        places: [bed('a', 5, 4), bed('b', 6.8, 4)],
        wishes: [{ plant: cabbage, area: 2 }],
        seasons: 2,
        rules: [
          { place: 'a', stays: [{ plant: blueberry, area: 2 }] },
          { place: 'b', fixed: [{ plant: bean, area: 1 }] },
        ],
      }),
      solver,
    );
    expect(grows(result, 'a', 2)).toEqual(['blueberry']);
    expect(grows(result, 'b')).toContain('bean');
    // bean is fixed in both seasons: the gardener's word goes before the rotation, which is said
    expect(grows(result, 'b', 2)).toContain('bean');
    expect(saidIn(result.places[1]?.reasons ?? [])).toContain('placing.fixed-breaks-rotation');
  });

  it('rests a family from where it grew, by the published interval', () => {
    // four years between nightshades: common extension tables (rotation-text, memory)
    const tomato = plantRangeOf(
      findPlant('tomato') ??
        (() => {
          throw new Error('no tomato');
        })(),
    );
    const places = [bed('a', 6.5, 2), bed('b', 6.5, 2)];
    const rules = [{ place: 'a', history: [{ grew: 'potato', yearsAgo: 1 }] }];
    const result = arrange(input({ places, rules, wishes: [{ plant: tomato, area: 2 }] }), solver);
    expect(grows(result, 'b')).toEqual(['Tomato']);
    const crowded = arrange(input({ places, rules, seasons: 2, wishes: [{ plant: tomato, area: 2 }] }), solver);
    expect(crowded.unmet).toHaveLength(1);
    expect(saidIn(crowded.unmet[0]?.reasons ?? [])).toContain('placing.rotation-in-the-way');
  });

  it('says which wish cannot be met and why', () => {
    const limy = bed('limy', 7.9, 4);
    const result = arrange(
      input({
        places: [
          { ...limy, tests: limy.tests.map((test) => ({ ...test, carbonate: 0.05 })) },
          bed('unknown', undefined, 4),
        ],
        wishes: [{ plant: blueberry, area: 2 }],
      }),
      solver,
    );
    expect(result.unmet).toHaveLength(1);
    const codes = saidIn(result.unmet[0]?.reasons ?? []);
    expect(codes[0]).toBe('placing.no-place');
    expect(codes).toEqual(
      expect.arrayContaining([
        'placing.barred-ph',
        'placing.free-lime',
        'placing.barred-untested',
        'placing.try-a-pot',
      ]),
    );
    for (const message of result.unmet[0]?.reasons ?? []) expect(say(message, 'us')).not.toMatch(/[{}]/);
  });

  it('offers a pot where the ground will not do', () => {
    const pot = bed('pot', undefined, 1, {
      kind: 'container',
      situation: 'container',
      medium: 'soilless',
      volume: 0.2,
    });
    const result = arrange(
      input({
        places: [bed('sweet', 6.8, 2), pot],
        wishes: [
          { plant: blueberry, area: 1 },
          { plant: cabbage, area: 2, pots: 'never' },
        ],
      }),
      solver,
    );
    expect(grows(result, 'pot')).toEqual(['blueberry']);
    expect(result.figures.currency).toBe(0);
    expect(saidIn(result.places[1]?.reasons ?? [])).toEqual(['placing.fresh-pot']);
  });

  it('does not count on a shady place for what wants sun, nor acidify where there is lead', () => {
    const lead = bed('lead', 6.5, 2);
    const result = arrange(
      input({
        places: [bed('shady', 5, 2), { ...lead, tests: lead.tests.map((test) => ({ ...test, lead: 300e-6 })) }],
        rules: [{ place: 'shady', light: 'shade' }],
        wishes: [{ plant: blueberry, area: 1, light: 'sun' }],
      }),
      solver,
    );
    expect(saidIn(result.unmet[0]?.reasons ?? [])).toEqual(
      expect.arrayContaining(['placing.barred-light', 'placing.lead']),
    );
  });

  it('says that a mixed bed has no common range, with the least bad split', () => {
    const result = arrange(
      input({
        places: [bed('mixed', 6, 3)],
        wishes: [],
        rules: [
          {
            place: 'mixed',
            stays: [
              { plant: blueberry, area: 1 },
              { plant: cabbage, area: 1 },
            ],
          },
        ],
      }),
      solver,
    );
    expect(result.figures.currency).toBe(0);
    const [clash] = result.clashes;
    expect(clash?.plants).toEqual(['blueberry', 'cabbage']);
    expect(clash?.split.groups.map(({ plants }) => plants)).toEqual([['blueberry'], ['cabbage']]);
    expect(saidIn(clash?.messages ?? [])).toContain('placing.no-common-range');
  });

  it('refuses an area that is not one, and a rule for a place that is not there', () => {
    const wishes = [{ plant: bean, area: Number.NaN }];
    expect(() => arrange(input({ places: [bed('a', 6, 1)], wishes }), solver)).toThrow(/area/);
    expect(() => arrange(input({ places: [bed('a', 6, 1)], wishes: [], rules: [{ place: 'z' }] }), solver)).toThrow(
      /no place/,
    );
  });
});

import fc from 'fast-check';
import loadHighs from 'highs';
import { beforeAll, describe, expect, it } from 'vitest';
import { boardOf } from './board.ts';
import { tryAll } from './brute-force.ts';
import { unmetOf } from './calendar.ts';
import { greedy } from './greedy.ts';
import { highsSolver } from './highs.ts';
import type { PlacingInput, Wish } from './input.ts';
import { buildModel } from './model.ts';
import { optimum } from './optimum.ts';
import type { Solver } from './solver.ts';
import { bed, input, plant } from './testing.ts';

let solver: Solver;
beforeAll(async () => {
  solver = highsSolver(await loadHighs());
});

const ranges = [
  [4.5, 5.5],
  [5.5, 6.5],
  [6, 7],
  [6.5, 7.5],
  [5, 7],
] as const;

/** Gardens of a few pieces, so that every way can be tried. */
const small: fc.Arbitrary<PlacingInput> = fc
  .record({
    shape: fc.constantFrom([2, 1], [3, 1], [2, 2], [1, 3]),
    phs: fc.array(fc.integer({ min: 46, max: 76 }), { minLength: 3, maxLength: 3 }),
    areas: fc.array(fc.integer({ min: 1, max: 2 }), { minLength: 3, maxLength: 3 }),
    wishes: fc.array(
      fc.record({
        range: fc.constantFrom(...ranges),
        area: fc.integer({ min: 1, max: 2 }),
        family: fc.constantFrom('Solanaceae', 'Poaceae', 'none of them'),
        stays: fc.boolean(),
        all: fc.boolean(),
        light: fc.constantFrom(undefined, 'sun', 'shade'),
      }),
      { minLength: 1, maxLength: 3 },
    ),
    dark: fc.boolean(),
    rested: fc.constantFrom(undefined, 1, 3),
    fixed: fc.boolean(),
  })
  .map(({ shape: [count = 1, seasons = 1], phs, areas, wishes, dark, rested, fixed }) => {
    const places = phs.slice(0, count).map((ph, at) => bed(`bed ${at}`, ph / 10, areas[at] ?? 1));
    const wished = wishes.map(
      ({ range: [low, high], area, family, stays, all, light }, at): Wish => ({
        plant: plant(`plant ${at}`, low, high),
        area,
        family,
        stays: stays && seasons > 1,
        ...(all ? {} : { seasons: [1] }),
        ...(light === undefined ? {} : { light: light as 'sun' | 'shade' }),
      }),
    );
    return input({
      places,
      wishes: wished,
      seasons: seasons as 1 | 2 | 3,
      rules: [
        {
          place: 'bed 0',
          ...(dark ? { light: 'part shade' as const } : {}),
          ...(rested === undefined ? {} : { history: [{ grew: 'Solanaceae', yearsAgo: rested }] }),
          ...(fixed ? { fixed: [{ plant: (wished[0] as Wish).plant, area: 1 }] } : {}),
        },
      ],
    });
  });

describe('the optimum', () => {
  it('finds what trying every way finds, and the greedy gardener never does better', () => {
    let moving = 0;
    let short = 0;
    fc.assert(
      fc.property(small, (garden) => {
        const board = boardOf(garden);
        // What is fixed against the pH, the light or the rotation is told, not searched.
        fc.pre(board.spots.every((spot) => spot.clash === undefined && spot.exempt.size === 0));
        fc.pre(!board.spots.some(({ fixed, since }) => fixed.size > 0 && (since.size > 0 || garden.seasons > 1)));
        const best = tryAll(board);
        const found = optimum(board, solver);
        expect(found?.proven).toBe(true);
        expect(found && unmetOf(found.choice)).toBe(best.unmet);
        expect(found?.choice.moved).toBeCloseTo(best.moved, 3);
        const baseline = greedy(board);
        expect(unmetOf(baseline)).toBeGreaterThanOrEqual(best.unmet);
        if (unmetOf(baseline) === best.unmet) expect(baseline.moved).toBeGreaterThanOrEqual(best.moved - 1e-6);
        if (best.moved > 0) moving++;
        if (best.unmet > 0) short++;
      }),
      { numRuns: 250, seed: 20261101 },
    );
    // The gardens above must hold both kinds, or the property says little.
    expect(moving).toBeGreaterThan(10);
    expect(short).toBeGreaterThan(10);
  });

  it('comes to the same by the full programme as by moves first', () => {
    fc.assert(
      fc.property(small, (garden) => {
        const board = boardOf(garden);
        const full = solver(buildModel(board).model);
        const found = optimum(board, solver);
        if (full.values === undefined) expect(found && unmetOf(found.choice)).toBeGreaterThan(0);
        else expect(found?.choice.moved).toBeCloseTo(full.objective, 3);
      }),
      { numRuns: 80, seed: 7 },
    );
  });

  it('keeps the rules in what it hands back', () => {
    fc.assert(
      fc.property(small, (garden) => {
        const board = boardOf(garden);
        const found = optimum(board, solver);
        if (found === undefined) throw new Error('no way at all');
        found.choice.pieces.forEach((spots, season) => {
          spots.forEach((row, at) => {
            const spot = board.spots[at];
            if (spot === undefined) throw new Error('no such place');
            expect(row.reduce((sum, each) => sum + each, 0)).toBeLessThanOrEqual(spot.room);
            row.forEach((size, index) => {
              expect(size).toBeGreaterThanOrEqual(spot.fixed.get(index)?.[season] ?? 0);
              const item = board.items[index];
              if (size === 0 || spot.exempt.has(index) || item === undefined) return;
              const ph = spot.moves[found.choice.moves[at] as number]?.ph ?? Number.NaN;
              expect(ph).toBeGreaterThanOrEqual(item.plant.low - 1e-9);
              expect(ph).toBeLessThanOrEqual(item.plant.high + 1e-9);
              if (item.stays) expect(found.choice.pieces.every((each) => each[at]?.[index] === size)).toBe(true);
            });
          });
        });
      }),
      { numRuns: 80, seed: 8 },
    );
  });

  it('asks for no less soil when one more thing is wished for, and for no more when a place is added', () => {
    const costOf = (garden: PlacingInput) => {
      const found = optimum(boardOf(garden), solver);
      return found === undefined ? undefined : { unmet: unmetOf(found.choice), moved: found.choice.moved };
    };
    fc.assert(
      fc.property(small, (garden) => {
        const before = costOf({ ...garden, rules: [] });
        const more = costOf({
          ...garden,
          rules: [],
          wishes: [...garden.wishes, { plant: plant('one more', 6, 7), area: 1 }],
        });
        const wider = costOf({ ...garden, rules: [], places: [...garden.places, bed('one more', 6.2, 2)] });
        if (before === undefined || more === undefined || wider === undefined) throw new Error('no way at all');
        expect(more.unmet).toBeGreaterThanOrEqual(before.unmet);
        expect(wider.unmet).toBeLessThanOrEqual(before.unmet);
        if (wider.unmet === before.unmet) expect(wider.moved).toBeLessThanOrEqual(before.moved + 1e-3);
      }),
      { numRuns: 60, seed: 9 },
    );
  });
});

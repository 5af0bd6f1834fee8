import type { Board, Spot } from './board.ts';

/** What the best of all ways comes to, found by trying every one; for gardens of a few pieces only. */
export interface Tried {
  readonly unmet: number;
  readonly moved: number;
}

interface PlacePlan {
  /** By season, then item. */
  readonly pieces: readonly (readonly number[])[];
  readonly moved: number;
}

/**
 * Tries every way to fill every place in every season, and keeps those that obey the rules as a gardener would put them:
 * one pH for each place that every plant there calls best, families rested, plants that stay left standing, what is
 * fixed kept. Knows nothing of the programme. For tests.
 */
export function tryAll(board: Board): Tried {
  const plans = board.spots.map((spot) => plansFor(board, spot));
  let best: Tried = { unmet: Number.POSITIVE_INFINITY, moved: Number.POSITIVE_INFINITY };
  const left = board.items.map(({ demand }) => [...demand]);
  const go = (at: number, moved: number): void => {
    if (at === plans.length) {
      let unmet = 0;
      for (const list of left) for (const each of list) unmet += Math.max(0, each);
      if (unmet < best.unmet || (unmet === best.unmet && moved < best.moved)) best = { unmet, moved };
      return;
    }
    for (const plan of plans[at] ?? []) {
      change(plan, -1);
      go(at + 1, moved + plan.moved);
      change(plan, 1);
    }
  };
  const change = ({ pieces }: PlacePlan, sign: number): void => {
    pieces.forEach((row, season) => {
      row.forEach((size, item) => {
        const list = left[item] as number[];
        list[season] = (list[season] as number) + sign * size;
      });
    });
  };
  go(0, 0);
  return best;
}

function plansFor(board: Board, spot: Spot): PlacePlan[] {
  const fillings = waysToFill(spot.room, board.items.length);
  let calendars: number[][][] = [[]];
  for (let season = 0; season < board.seasons; season++)
    calendars = calendars.flatMap((calendar) => fillings.map((filling) => [...calendar, filling]));
  return calendars.flatMap((pieces) => {
    const moved = costOf(board, spot, pieces);
    return moved === undefined ? [] : [{ pieces, moved }];
  });
}

function waysToFill(room: number, items: number): number[][] {
  if (items === 0) return [[]];
  return Array.from({ length: room + 1 }, (_, size) => size).flatMap((size) =>
    waysToFill(room - size, items - 1).map((rest) => [size, ...rest]),
  );
}

function costOf(board: Board, spot: Spot, pieces: readonly (readonly number[])[]): number | undefined {
  const seasonsOf = (item: number) => pieces.flatMap((row, season) => ((row[item] ?? 0) > 0 ? [season] : []));
  const byFamily = new Map<string, Set<number>>();
  let from = Number.NEGATIVE_INFINITY;
  let to = Number.POSITIVE_INFINITY;
  for (const [index, item] of board.items.entries()) {
    for (let season = 0; season < board.seasons; season++) {
      if ((pieces[season]?.[index] ?? 0) < (spot.fixed.get(index)?.[season] ?? 0)) return undefined;
      if ((pieces[season]?.[index] ?? 0) > (item.demand[season] ?? 0)) return undefined;
    }
    const grown = seasonsOf(index);
    if (grown.length === 0) continue;
    if (item.stays && pieces.some((row) => row[index] !== pieces[0]?.[index])) return undefined;
    if (spot.bars[index] === 'light' || spot.bars[index] === 'pots') return undefined;
    from = Math.max(from, item.plant.low);
    to = Math.min(to, item.plant.high);
    if (item.stays) continue;
    const seasons = byFamily.get(item.family) ?? new Set<number>();
    for (const season of grown) seasons.add(season);
    byFamily.set(item.family, seasons);
  }
  for (const [family, seasons] of byFamily) {
    const { years } = board.rotation(spot, family);
    const list = [...seasons].sort();
    if (list.some((season, at) => at > 0 && season - (list[at - 1] as number) < years)) return undefined;
    const since = spot.since.get(family);
    if (since !== undefined && list.some((season) => season + since < years)) return undefined;
  }
  const costs = spot.moves.filter(({ ph }) => ph >= from - 1e-9 && ph <= to + 1e-9).map(({ currency }) => currency);
  return costs.length === 0 ? undefined : Math.min(...costs);
}

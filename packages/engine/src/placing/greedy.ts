import { type Board, restsFrom, type Spot } from './board.ts';
import { breaksRotation } from './model.ts';
import type { Choice } from './read-back.ts';

interface State {
  readonly spot: Spot;
  readonly sought: number;
  /** Moves that suit all that grows here so far. */
  from: number;
  to: number;
  readonly free: number[];
  readonly grown: Int32Array[];
  /** Seasons each family grows here. */
  readonly families: Map<string, Set<number>>;
}

/**
 * What a careful gardener does without a programme: the plant with the fewest possible places first, each in turn where
 * it costs least at that moment, then in the tightest place that holds it all. Used as the baseline that the optimum is held against.
 *
 * @param first items that go before all others, in this order
 * @param sought by place, how much others want it: of places that cost the same the least sought is taken
 */
export function greedy(board: Board, first: readonly number[] = [], sought?: readonly number[]): Choice {
  const { items, seasons, spots } = board;
  const states = spots.map((spot, at): State => {
    const free = new Array<number>(seasons).fill(spot.room);
    return {
      spot,
      sought: sought?.[at] ?? 0,
      from: 0,
      to: spot.moves.length - 1,
      free,
      grown: Array.from({ length: seasons }, () => new Int32Array(items.length)),
      families: new Map(),
    };
  });
  for (const state of states)
    for (const [index, pieces] of state.spot.fixed)
      pieces.forEach((size, season) => {
        if (size > 0) grow(state, index, season, size, !state.spot.exempt.has(index));
      });
  const unmet = items.map(() => new Array<number>(seasons).fill(0));
  const chances = items.map((_, index) => spots.filter((spot) => spot.suits[index] !== undefined).length);
  const rest = items.map((_, index) => index).filter((index) => !first.includes(index));
  const order = [...first, ...rest.sort((a, b) => (chances[a] as number) - (chances[b] as number) || a - b)];
  for (const index of order) {
    const item = items[index];
    if (item === undefined) continue;
    const rounds = item.stays
      ? [Array.from({ length: seasons }, (_, season) => season)]
      : item.demand.map((_, season) => [season]);
    for (const round of rounds) {
      const season = round[0] as number;
      let wanted =
        (item.demand[season] as number) -
        states.reduce((sum, { grown }) => sum + (grown[season]?.[index] as number), 0);
      while (wanted > 0) {
        const best = cheapest(index, round, wanted);
        if (best === undefined) break;
        const size = Math.min(wanted, ...round.map((each) => best.free[each] as number));
        for (const each of round) grow(best, index, each, size, true);
        wanted -= size;
      }
      for (const each of round) (unmet[index] as number[])[each] = wanted;
    }
  }
  const moves = states.map(({ spot, from, to }) => leastMove(spot, from, to));
  let moved = 0;
  states.forEach(({ spot }, at) => {
    moved += spot.moves[moves[at] as number]?.currency ?? 0;
  });
  const pieces = Array.from({ length: seasons }, (_, season) => states.map(({ grown }) => grown[season] as Int32Array));
  return { moves, pieces, unmet, moved };

  function grow(state: State, index: number, season: number, size: number, binds: boolean): void {
    const row = state.grown[season] as Int32Array;
    row[index] = (row[index] as number) + size;
    state.free[season] = (state.free[season] as number) - size;
    const suits = state.spot.suits[index];
    if (binds && suits !== undefined) {
      state.from = Math.max(state.from, suits.from);
      state.to = Math.min(state.to, suits.to);
    }
    const family = items[index]?.family;
    if (family === undefined || items[index]?.stays) return;
    const grew = state.families.get(family);
    if (grew === undefined) state.families.set(family, new Set([season]));
    else grew.add(season);
  }

  function cheapest(index: number, round: readonly number[], wanted: number): State | undefined {
    let best: State | undefined;
    let least = Number.POSITIVE_INFINITY;
    for (const state of states) {
      const suits = state.spot.suits[index];
      if (suits === undefined || round.some((season) => (state.free[season] as number) <= 0)) continue;
      const from = Math.max(state.from, suits.from);
      const to = Math.min(state.to, suits.to);
      if (from > to || !rested(state, index, round)) continue;
      const cost = costAt(state.spot, from, to) - costAt(state.spot, state.from, state.to);
      if (cost < least - 1e-9 || (cost < least + 1e-9 && better(state, best, round[0] as number, wanted))) {
        best = state;
        least = cost;
      }
    }
    return best;
  }

  function rested(state: State, index: number, round: readonly number[]): boolean {
    const item = items[index];
    if (item === undefined || item.stays) return true;
    const { years } = board.rotation(state.spot, item.family);
    const grew = state.families.get(item.family);
    const loose = breaksRotation(board, state.spot, item.family);
    return round.every(
      (season) =>
        !restsFrom(board, state.spot, item.family, season) &&
        (loose || [...(grew ?? [])].every((other) => other === season || Math.abs(other - season) >= years)),
    );
  }
}

/** Whether a place is less sought than another or holds what is wanted more snugly: the tightest that holds it all, else the roomiest. */
function better(state: State, best: State | undefined, season: number, wanted: number): boolean {
  if (best !== undefined && state.sought !== best.sought) return state.sought < best.sought;
  const here = state.free[season] as number;
  const there = best?.free[season] ?? 0;
  return here >= wanted ? there < wanted || here < there : here > there;
}

const costAt = (spot: Spot, from: number, to: number): number => spot.moves[leastMove(spot, from, to)]?.currency ?? 0;

/** The move in a span that moves least; moves rise in cost away from the present pH. */
function leastMove({ moves }: Spot, from: number, to: number): number {
  let best = Math.min(from, moves.length - 1);
  for (let at = from; at <= to && at < moves.length; at++)
    if ((moves[at]?.currency ?? Infinity) < (moves[best]?.currency ?? Infinity)) best = at;
  return best;
}

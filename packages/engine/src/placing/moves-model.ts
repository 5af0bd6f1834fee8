import { type Board, restsFrom, type Spot } from './board.ts';
import { breaksRotation } from './model.ts';
import { type LinearModel, type ModelBuilder, modelBuilder } from './solver.ts';

/** The smaller programme that only settles the moves. */
export interface MovesModel {
  readonly model: LinearModel;
  /** By place: one column a move; empty when there is no choice. */
  readonly moves: readonly (readonly number[])[];
}

export interface MovesOptions {
  /** `moved`: as little soil moved as can be; `unmet`: as few pieces of wishes left out as can be. */
  readonly least?: 'moved' | 'unmet';
  /** Pieces that may be left out altogether; every wish is met when left out. */
  readonly mostUnmet?: number;
  /** Columns of moves of which no more than `most` may be made. */
  readonly cut?: (moves: readonly (readonly number[])[]) => {
    readonly columns: readonly number[];
    readonly most: number;
  };
}

/** Pieces of one item in one place, over all seasons or in one. */
interface Lane {
  readonly column: number;
  readonly item: number;
  readonly season: number | undefined;
  /** Seasons the pieces stand, for plants that stay. */
  readonly weight: number;
}

/**
 * The garden with its seasons taken together: a plant wanted in every season has one column a place, for its pieces in
 * all of them, and a family fills no more of a place than its turns allow. Whatever the full programme allows, this one
 * allows too, so its least is a floor under the true least, and when a calendar can be found for its moves the floor is
 * the answer. It is several times smaller than the full programme, which is what makes large gardens quick.
 */
export function buildMovesModel(board: Board, options: MovesOptions = {}): MovesModel {
  const b = modelBuilder();
  const { items, seasons } = board;
  const least = options.least ?? 'moved';
  const elastic = least === 'unmet' || options.mostUnmet !== undefined;
  const moves = board.spots.map((spot) => moveColumns(b, spot, least));
  const lanes = board.spots.map((spot) => lanesOf(b, board, spot));
  board.spots.forEach((spot, at) => {
    const here = lanes[at] as Lane[];
    if (here.length === 0) return;
    for (const lane of here) b.entry(lane.column, lane.weight);
    b.close(0, seasons * spot.room);
    for (let season = 0; season < seasons; season++) {
      const now = here.filter((lane) => lane.season === season || items[lane.item]?.stays);
      for (const lane of now) b.entry(lane.column, 1);
      if (now.length > 0) b.close(0, spot.room);
    }
    suitRows(b, spot, moves[at] as number[], here, seasons);
    familyRows(b, board, spot, here);
  });
  const byItem = items.map((): Lane[] => []);
  for (const list of lanes) for (const lane of list) byItem[lane.item]?.push(lane);
  const short: { readonly column: number; readonly weight: number }[] = [];
  items.forEach((item, index) => {
    const whole = item.stays || item.demand.every((wanted) => wanted > 0);
    const sum = item.demand.reduce((total, wanted) => total + wanted, 0);
    const wants = item.stays
      ? ([[undefined, item.demand[0] as number]] as const)
      : whole
        ? ([[undefined, sum]] as const)
        : item.demand.map((wanted, season) => [season, wanted] as const);
    for (const [season, wanted] of wants) {
      if (wanted === 0) continue;
      for (const lane of byItem[index] ?? []) if (lane.season === season) b.entry(lane.column, 1);
      if (elastic) {
        const weight = item.stays ? seasons : 1;
        const column = b.column(least === 'unmet' ? weight : 0, 0, wanted, false);
        short.push({ column, weight });
        b.entry(column, 1);
      }
      b.close(wanted, wanted);
    }
  });
  if (options.mostUnmet !== undefined) {
    for (const { column, weight } of short) b.entry(column, weight);
    b.close(0, options.mostUnmet);
  }
  const cut = options.cut?.(moves);
  if (cut !== undefined) {
    for (const column of cut.columns) b.entry(column, 1);
    b.close(Number.NEGATIVE_INFINITY, cut.most);
  }
  return { model: b.model(), moves };
}

/** One column a move, of which exactly one is made; none where there is no choice. */
export function moveColumns(b: ModelBuilder, spot: Spot, least: 'moved' | 'unmet'): number[] {
  if (spot.moves.length < 2) return [];
  const columns = spot.moves.map((move) => b.column(least === 'moved' ? move.currency : 0, 0, 1, true));
  for (const column of columns) b.entry(column, 1);
  b.close(1, 1);
  return columns;
}

function lanesOf(b: ModelBuilder, { items, seasons, ...board }: Board, spot: Spot): Lane[] {
  const lanes: Lane[] = [];
  items.forEach((item, index) => {
    const suits = spot.suits[index] !== undefined;
    let [low, high] = [0, 0];
    const open = Array.from({ length: seasons }, (_, season) => {
      const here = spot.fixed.get(index)?.[season] ?? 0;
      const most = suits ? Math.min(spot.room, item.demand[season] as number) : here;
      const rests = !item.stays && restsFrom({ items, seasons, ...board }, spot, item.family, season);
      const top = rests ? here : most;
      low += here;
      high += top;
      return { here, top };
    });
    if (high === 0) return;
    if (item.stays) {
      const { here, top } = open[0] as (typeof open)[number];
      lanes.push({ column: b.column(0, here, top, true), item: index, season: undefined, weight: seasons });
    } else if (item.demand.every((wanted) => wanted > 0))
      lanes.push({ column: b.column(0, low, high, false), item: index, season: undefined, weight: 1 });
    else
      open.forEach(({ here, top }, season) => {
        if (top > 0) lanes.push({ column: b.column(0, here, top, false), item: index, season, weight: 1 });
      });
  });
  return lanes;
}

/** All that need a sweeter end fill nothing unless a move reaches it, and no more than the place in all its seasons; the same from the other side. */
function suitRows(
  b: ModelBuilder,
  { suits, moves, room }: Spot,
  columns: readonly number[],
  lanes: readonly Lane[],
  seasons: number,
): void {
  if (columns.length === 0) return;
  for (const side of ['from', 'to'] as const)
    for (let at = 0; at < moves.length; at++) {
      if (side === 'from' ? at === 0 : at === moves.length - 1) continue;
      if (!lanes.some(({ item }) => suits[item]?.[side] === at)) continue;
      const low = side === 'from' ? at : 0;
      const high = side === 'from' ? moves.length : at + 1;
      for (const { column, item, weight } of lanes) {
        const suit = suits[item];
        if (suit !== undefined && (side === 'from' ? suit.from >= at : suit.to <= at)) b.entry(column, weight);
      }
      for (let move = low; move < high; move++) b.entry(columns[move] as number, -room * seasons);
      b.close(Number.NEGATIVE_INFINITY, 0);
    }
}

/** A family fills a place no more often than its rest allows. */
function familyRows(b: ModelBuilder, board: Board, spot: Spot, lanes: readonly Lane[]): void {
  const families = new Map<string, Lane[]>();
  for (const lane of lanes) {
    const item = board.items[lane.item];
    if (item === undefined || item.stays) continue;
    const list = families.get(item.family);
    if (list === undefined) families.set(item.family, [lane]);
    else list.push(lane);
  }
  for (const [family, list] of families) {
    const turns = Math.ceil(board.seasons / Math.max(1, board.rotation(spot, family).years));
    if (turns >= board.seasons || breaksRotation(board, spot, family)) continue;
    for (const { column } of list) b.entry(column, 1);
    b.close(0, turns * spot.room);
  }
}

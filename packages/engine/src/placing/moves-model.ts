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
  /** Most it can hold over all seasons, in pieces times seasons. */
  readonly most: number;
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
    suitRows(b, board, spot, moves[at] as number[], here);
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

/** One column a move, of which exactly one is made; none where there is neither a choice nor a cost. */
export function moveColumns(b: ModelBuilder, spot: Spot, least: 'moved' | 'unmet'): number[] {
  if (spot.moves.length < 2 && (spot.moves[0]?.currency ?? 0) === 0) return [];
  const columns = spot.moves.map((move) => b.column(least === 'moved' ? move.currency : 0, 0, 1, true));
  for (const column of columns) b.entry(column, 1);
  b.close(1, 1);
  return columns;
}

/** Seasons a family may grow in one place, by its rest; all of them where the gardener broke the rest already. */
function turnsOf(board: Board, spot: Spot, family: string): number {
  const { years } = board.rotation(spot, family);
  return years < 2 || breaksRotation(board, spot, family) ? board.seasons : Math.ceil(board.seasons / years);
}

function lanesOf(b: ModelBuilder, board: Board, spot: Spot): Lane[] {
  const { items, seasons } = board;
  const lanes: Lane[] = [];
  items.forEach((item, index) => {
    const suits = spot.suits[index] !== undefined;
    const open = Array.from({ length: seasons }, (_, season) => {
      const here = spot.fixed.get(index)?.[season] ?? 0;
      const most = suits ? Math.min(spot.room, item.demand[season] as number) : here;
      const rests = !item.stays && restsFrom(board, spot, item.family, season);
      return { here, top: rests ? here : most };
    });
    const add = (least: number, most: number, season: number | undefined, weight: number): void => {
      if (most <= 0) return;
      lanes.push({ column: b.column(0, least, most, item.stays), item: index, season, weight, most: weight * most });
    };
    const [first] = open;
    if (item.stays) add(first?.here ?? 0, first?.top ?? 0, undefined, seasons);
    else if (item.demand.every((wanted) => wanted > 0)) {
      // No more than its turns allow, each with no more than one season asks for: so a family that must find a new place
      // every season needs that many places.
      const tops = open.map(({ top }) => top).sort((a, c) => c - a);
      const turns = tops.slice(0, turnsOf(board, spot, item.family));
      const least = open.reduce((sum, { here }) => sum + here, 0);
      add(
        least,
        Math.max(
          least,
          turns.reduce((sum, top) => sum + top, 0),
        ),
        undefined,
        1,
      );
    } else
      open.forEach(({ here, top }, season) => {
        add(here, top, season, 1);
      });
  });
  return lanes;
}

/** Most that some lanes can hold together in one place: each no more than its own, a family no more than its turns. */
function mostOf(board: Board, spot: Spot, lanes: readonly Lane[]): number {
  let sum = 0;
  const families = new Map<string, number>();
  for (const { item, most } of lanes) {
    const { stays, family } = board.items[item] as Board['items'][number];
    if (stays) sum += most;
    else families.set(family, (families.get(family) ?? 0) + most);
  }
  for (const [family, most] of families) sum += Math.min(most, turnsOf(board, spot, family) * spot.room);
  return Math.min(sum, board.seasons * spot.room);
}

/**
 * All that need at least this pH fill nothing unless a move reaches it; the same from the other side, and for all that
 * want the same stretch.
 */
function suitRows(b: ModelBuilder, board: Board, spot: Spot, columns: readonly number[], lanes: readonly Lane[]): void {
  const { suits, moves } = spot;
  const last = moves.length - 1;
  if (columns.length === 0) return;
  const row = (from: number, to: number, belongs: (suit: { from: number; to: number }) => boolean): void => {
    const members = lanes.filter(({ item }) => {
      const suit = suits[item];
      return suit !== undefined && belongs(suit);
    });
    if (members.length === 0) return;
    for (const { column, weight } of members) b.entry(column, weight);
    const most = mostOf(board, spot, members);
    for (let move = from; move <= to; move++) b.entry(columns[move] as number, -most);
    b.close(Number.NEGATIVE_INFINITY, 0);
  };
  const found = new Set<number>();
  for (const { item } of lanes) {
    const suit = suits[item];
    if (suit === undefined) continue;
    const { from, to } = suit;
    const once = (key: number): boolean => !found.has(key) && found.add(key) !== undefined;
    if (from > 0 && once(from)) row(from, last, (each) => each.from >= from);
    if (to < last && once(-1 - to)) row(0, to, (each) => each.to <= to);
    if (from > 0 && to < last && once((from + 1) * 1000 + to))
      row(from, to, (each) => each.from >= from && each.to <= to);
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
    const most = turnsOf(board, spot, family) * spot.room;
    if (list.reduce((sum, lane) => sum + lane.most, 0) <= most) continue;
    for (const { column } of list) b.entry(column, 1);
    b.close(0, most);
  }
}

import { type Board, restsFrom, type Spot } from './board.ts';
import { type MovesOptions, moveColumns } from './moves-model.ts';
import { type LinearModel, modelBuilder } from './solver.ts';

/** Where the columns of one place stand; -1 where there is none. */
export interface SpotColumns {
  /** One for each open move: 1 when it is made. Empty when there is no choice. */
  readonly moves: readonly number[];
  /** By item, then season: pieces grown. All seasons of a plant that stays share a column. */
  readonly pieces: readonly (readonly number[])[];
  /** By family: columns by season, 1 when the family may grow here then. */
  readonly families: ReadonlyMap<string, readonly number[]>;
}

export interface Built {
  readonly model: LinearModel;
  readonly spots: readonly SpotColumns[];
  /** By item, then season: pieces not grown; only when wishes may be left unmet. */
  readonly unmet: readonly (readonly number[])[];
}

export interface BuildOptions extends MovesOptions {
  /** Leave the rotation out, to see whether it is what stands in the way. */
  readonly noRotation?: boolean;
}

const NONE = -1;

/**
 * The garden as a whole-number programme. For each place: one move is made; a plant grows only where the move made suits
 * it. The rule is written for whole sets of plants at a time, *all that need at least this pH fill no more than the
 * place when a move reaches it, and nothing otherwise*, which keeps the relaxed programme close to the true one. Given
 * the moves and the families the rest is a transport problem, whose corners are whole, so pieces of plants that do not
 * stay need not be declared so.
 */
export function buildModel(board: Board, options: BuildOptions = {}): Built {
  const b = modelBuilder();
  const { items, seasons } = board;
  const least = options.least ?? 'moved';
  const elastic = least === 'unmet' || options.mostUnmet !== undefined;
  const byFamily = new Map<string, number[]>();
  items.forEach((item, index) => {
    if (item.stays) return;
    const list = byFamily.get(item.family);
    if (list === undefined) byFamily.set(item.family, [index]);
    else list.push(index);
  });

  const spots: SpotColumns[] = board.spots.map((spot) => {
    const moves = moveColumns(b, spot, least);
    const pieces = items.map((item, index) => {
      const suits = spot.suits[index] !== undefined;
      const fixed = spot.fixed.get(index);
      const column = (season: number): number => {
        const here = fixed?.[season] ?? 0;
        const most = suits ? Math.min(spot.room, item.demand[season] ?? 0) : here;
        const rests = !item.stays && options.noRotation !== true && restsFrom(board, spot, item.family, season);
        const open = rests ? here : most;
        return open <= 0 ? NONE : b.column(0, here, open, item.stays);
      };
      if (!item.stays) return Array.from({ length: seasons }, (_, season) => column(season));
      return new Array<number>(seasons).fill(column(0));
    });
    return { moves, pieces, families: new Map() };
  });

  board.spots.forEach((spot, index) => {
    const columns = spots[index] as SpotColumns;
    for (let season = 0; season < seasons; season++) {
      let any = false;
      for (const list of columns.pieces) {
        const column = list[season] as number;
        if (column === NONE) continue;
        b.entry(column, 1);
        any = true;
      }
      if (any) b.close(0, spot.room);
      suitRows(spot, columns, season);
    }
    if (options.noRotation !== true)
      for (const [family, members] of byFamily) {
        const rows = familyRows(spot, columns, family, members);
        if (rows !== undefined) (columns.families as Map<string, readonly number[]>).set(family, rows);
      }
  });

  const unmet: number[][] = items.map((item, index) => {
    const short = new Array<number>(seasons).fill(NONE);
    for (let season = 0; season < seasons; season++) {
      const wanted = item.demand[season] as number;
      if (wanted === 0 || (item.stays && season > 0)) continue;
      for (const { pieces } of spots) {
        const column = pieces[index]?.[season] as number;
        if (column !== NONE) b.entry(column, 1);
      }
      if (elastic) {
        // A plant that stays is missed in every season.
        const weight = item.stays ? seasons : 1;
        short[season] = b.column(least === 'unmet' ? weight : 0, 0, wanted, false);
        b.entry(short[season] as number, 1);
      }
      b.close(wanted, wanted);
    }
    return short;
  });
  if (options.noRotation !== true) for (const [family, members] of byFamily) coverRows(family, members);
  if (options.mostUnmet !== undefined) {
    unmet.forEach((list, index) => {
      for (const column of list) if (column !== NONE) b.entry(column, items[index]?.stays ? seasons : 1);
    });
    b.close(0, options.mostUnmet);
  }
  const cut = options.cut?.(spots.map(({ moves }) => moves));
  if (cut !== undefined) {
    for (const column of cut.columns) b.entry(column, 1);
    b.close(Number.NEGATIVE_INFINITY, cut.most);
  }
  return { model: b.model(), spots, unmet };

  /** Plants that need a sweeter end fill nothing unless a move reaches it; the same from the other side. */
  function suitRows(spot: Spot, { moves, pieces }: SpotColumns, season: number): void {
    if (moves.length === 0) return;
    for (const side of ['from', 'to'] as const)
      for (let at = side === 'from' ? 1 : 0; at < moves.length - (side === 'from' ? 0 : 1); at++) {
        let decisive = false;
        for (let index = 0; index < items.length; index++)
          if (spot.suits[index]?.[side] === at && pieces[index]?.[season] !== NONE) decisive = true;
        if (!decisive) continue;
        let most = 0;
        for (let index = 0; index < items.length; index++) {
          const suits = spot.suits[index];
          const column = pieces[index]?.[season] as number;
          if (suits === undefined || column === NONE) continue;
          if (side === 'from' ? suits.from < at : suits.to > at) continue;
          b.entry(column, 1);
          most += b.most(column);
        }
        const first = side === 'from' ? at : 0;
        const last = side === 'from' ? moves.length - 1 : at;
        const holds = Math.min(spot.room, most);
        for (let move = first; move <= last; move++) b.entry(moves[move] as number, -holds);
        b.close(Number.NEGATIVE_INFINITY, 0);
      }
  }

  /** A family grows here in no two seasons closer than its interval. What is fixed against that is left to the gardener. */
  function familyRows(spot: Spot, { moves, pieces }: SpotColumns, family: string, members: readonly number[]) {
    const years = board.rotation(spot, family).years;
    const holds = Array.from({ length: seasons }, (_, season) =>
      Math.min(
        spot.room,
        members.reduce((sum, index) => sum + mostIn(pieces[index]?.[season] as number), 0),
      ),
    );
    if (years < 2 || holds.filter((most) => most > 0).length < 2 || breaksRotation(board, spot, family))
      return undefined;
    const columns = holds.map((most) => (most > 0 ? b.column(0, 0, 1, true) : NONE));
    columns.forEach((column, season) => {
      if (column === NONE) return;
      const most = holds[season] as number;
      const here = members.flatMap((index) => {
        const piece = pieces[index]?.[season] as number;
        return piece === NONE ? [] : [piece];
      });
      for (const piece of here) b.entry(piece, 1);
      b.entry(column, -most);
      b.close(Number.NEGATIVE_INFINITY, 0);
      for (const piece of here) {
        if (b.most(piece) >= most) continue;
        b.entry(piece, 1);
        b.entry(column, -b.most(piece));
        b.close(Number.NEGATIVE_INFINITY, 0);
      }
    });
    const suiting = suitingMoves(spot, members, pieces);
    const window = Math.min(years, seasons);
    for (let first = 0; first + window <= seasons; first++) {
      for (let season = first; season < first + window; season++)
        if (columns[season] !== NONE) b.entry(columns[season] as number, 1);
      // A family has its turn only where a move suits one of its plants.
      const bound = moves.length > 0 && suiting.length < moves.length;
      if (bound) for (const move of suiting) b.entry(moves[move] as number, -1);
      b.close(Number.NEGATIVE_INFINITY, bound ? 0 : 1);
    }
    return columns;
  }

  function suitingMoves(spot: Spot, members: readonly number[], pieces: SpotColumns['pieces']): number[] {
    return spot.moves.flatMap((_, move) =>
      members.some((index) => {
        const suits = spot.suits[index];
        if (!(pieces[index] ?? []).some((column) => column !== NONE)) return false;
        // What is fixed against the pH is here whatever the move.
        return suits === undefined || (suits.from <= move && move <= suits.to);
      })
        ? [move]
        : [],
    );
  }

  function mostIn(column: number): number {
    return column === NONE ? 0 : b.most(column);
  }

  /** The turns of a family in a season together hold what is wanted of it: the same said of whole turns, which the solver can cut by. */
  function coverRows(family: string, members: readonly number[]): void {
    for (let season = 0; season < seasons; season++) {
      let wanted = members.reduce((sum, index) => sum + (items[index]?.demand[season] as number), 0);
      if (wanted === 0) continue;
      for (const [at, { pieces, families }] of spots.entries()) {
        const holds = Math.min(
          board.spots[at]?.room ?? 0,
          members.reduce((sum, index) => sum + mostIn(pieces[index]?.[season] as number), 0),
        );
        const turn = families.get(family)?.[season] ?? NONE;
        if (turn === NONE) wanted -= holds;
        else b.entry(turn, holds);
      }
      for (const index of members) {
        const column = unmet[index]?.[season] ?? NONE;
        if (column !== NONE) b.entry(column, 1);
      }
      b.close(wanted, Number.POSITIVE_INFINITY);
    }
  }
}

/** Whether what is fixed in a place already grows a family there too often. */
export function breaksRotation(board: Board, spot: Spot, family: string): boolean {
  const years = board.rotation(spot, family).years;
  const seasons = new Set<number>();
  for (const [index, pieces] of spot.fixed) {
    const item = board.items[index];
    if (item === undefined || item.stays || item.family !== family) continue;
    pieces.forEach((size, season) => {
      if (size > 0) seasons.add(season);
    });
  }
  const list = [...seasons].sort();
  return (
    list.some((season) => restsFrom(board, spot, family, season)) ||
    list.some((season, at) => at > 0 && season - (list[at - 1] as number) < years)
  );
}

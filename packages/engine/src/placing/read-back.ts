import type { Board } from './board.ts';
import type { Built } from './model.ts';

/** A solution in whole pieces. */
export interface Choice {
  /** By place: which of its moves is made; -1 where there is none. */
  readonly moves: readonly number[];
  /** By season, place, item: pieces grown. */
  readonly pieces: readonly (readonly Int32Array[])[];
  /** By item, then season: pieces left out. */
  readonly unmet: readonly (readonly number[])[];
  /** kg CaCO3 moved. */
  readonly moved: number;
}

const WHOLE = 1e-5;

/**
 * Reads a solution back as whole pieces. Moves and families are whole already; the pieces of each season are made so by
 * sending what rounding left over along the pairs that the moves and families allow, which always ends because the rest
 * is a transport problem.
 */
export function readBack(board: Board, built: Built, values: Float64Array): Choice {
  const { spots, items, seasons } = board;
  const moves = spots.map((spot, at) => {
    const columns = built.spots[at]?.moves ?? [];
    if (columns.length === 0) return spot.moves.length - 1;
    return columns.findIndex((column) => (values[column] as number) > 0.5);
  });
  let moved = 0;
  spots.forEach((spot, at) => {
    moved += spot.moves[moves[at] as number]?.currency ?? 0;
  });
  const pieces: Int32Array[][] = [];
  const unmet = items.map(() => new Array<number>(seasons).fill(0));
  for (let season = 0; season < seasons; season++) {
    const most = spots.map((spot, at) =>
      Int32Array.from(items, (item, index) => {
        const column = built.spots[at]?.pieces[index]?.[season] ?? -1;
        if (column < 0) return 0;
        const fixed = spot.fixed.get(index)?.[season] ?? 0;
        const suits = spot.suits[index];
        const move = moves[at] as number;
        if (suits === undefined || move < suits.from || move > suits.to) return fixed;
        const family = item.stays ? undefined : built.spots[at]?.families.get(item.family)?.[season];
        return family !== undefined && family >= 0 && (values[family] as number) < 0.5 ? fixed : spot.room;
      }),
    );
    const grown = spots.map((_, at) =>
      Int32Array.from(items, (_item, index) => {
        const column = built.spots[at]?.pieces[index]?.[season] ?? -1;
        return column < 0 ? 0 : Math.floor((values[column] as number) + WHOLE);
      }),
    );
    const free = spots.map((spot, at) => spot.room - sum(grown[at] as Int32Array));
    items.forEach((item, index) => {
      let short = (item.demand[season] as number) - grown.reduce((all, row) => all + (row[index] as number), 0);
      const wanted = item.stays ? 0 : short;
      for (let left = wanted; left > 0 && augment(index, most, grown, free); left--) short--;
      (unmet[index] as number[])[season] = Math.max(0, short);
    });
    tidy(
      grown,
      most,
      free,
      items.map(({ stays }) => stays),
      spots.map(
        ({ fixed }) =>
          (index: number) =>
            fixed.get(index)?.[season] ?? 0,
      ),
    );
    pieces.push(grown);
  }
  return { moves, pieces, unmet, moved };

  /** Finds room for one more piece of an item, moving pieces of others along when it must. */
  function augment(index: number, most: Int32Array[], grown: Int32Array[], free: number[]): boolean {
    const seen = new Set<number>();
    const place = (item: number): boolean => {
      for (let at = 0; at < spots.length; at++) {
        if (seen.has(at) || (grown[at]?.[item] as number) >= (most[at]?.[item] as number)) continue;
        seen.add(at);
        const row = grown[at] as Int32Array;
        if ((free[at] as number) > 0) free[at] = (free[at] as number) - 1;
        else {
          let made = false;
          for (let other = 0; other < items.length && !made; other++) {
            if (other === item || items[other]?.stays || (row[other] as number) <= fixedAt(at, other)) continue;
            if (place(other)) {
              row[other] = (row[other] as number) - 1;
              made = true;
            }
          }
          if (!made) continue;
        }
        row[item] = (row[item] as number) + 1;
        return true;
      }
      return false;
    };
    const season = pieces.length;
    const fixedAt = (at: number, item: number) => spots[at]?.fixed.get(item)?.[season] ?? 0;
    return place(index);
  }
}

const sum = (row: Int32Array): number => row.reduce((all, each) => all + each, 0);

/** Brings small shares of a plant together where it already grows and there is room, so that fewer beds hold a little of it. */
function tidy(
  grown: Int32Array[],
  most: readonly Int32Array[],
  free: number[],
  stays: readonly boolean[],
  fixed: readonly ((index: number) => number)[],
): void {
  for (let index = 0; index < stays.length; index++) {
    if (stays[index]) continue;
    const at = grown.flatMap((row, spot) => ((row[index] as number) > 0 ? [spot] : []));
    at.sort((a, b) => (grown[a]?.[index] as number) - (grown[b]?.[index] as number));
    for (const from of at) {
      const size = grown[from]?.[index] as number;
      if ((fixed[from] as (index: number) => number)(index) > 0) continue;
      const to = at.find(
        (spot) =>
          spot !== from &&
          (grown[spot]?.[index] as number) > 0 &&
          (free[spot] as number) >= size &&
          (grown[spot]?.[index] as number) + size <= (most[spot]?.[index] as number),
      );
      if (to === undefined) continue;
      (grown[to] as Int32Array)[index] = (grown[to]?.[index] as number) + size;
      (grown[from] as Int32Array)[index] = 0;
      free[to] = (free[to] as number) - size;
      free[from] = (free[from] as number) + size;
    }
  }
}

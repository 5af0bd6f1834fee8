import { type Board, restsFrom } from './board.ts';
import { breaksRotation } from './model.ts';
import type { Choice } from './read-back.ts';

/**
 * Finds room for what a choice leaves out, a piece at a time, moving pieces of other plants along when it must. The moves
 * stay as they are, and so do plants that stay and what is fixed.
 *
 * @param board with its moves settled, so that `suits` alone says who may grow where
 * @source augmenting paths of the transport problem; own rule (SORREL) for the rotation between seasons
 */
export function mend(board: Board, choice: Choice): Choice {
  const { spots, items, seasons } = board;
  const pieces = choice.pieces.map((rows) => rows.map((row) => row.slice()));
  const unmet = choice.unmet.map((list) => [...list]);
  const families = [...new Set(items.map(({ family }) => family))];
  const familyAt = items.map(({ family }) => families.indexOf(family));
  // Pieces of a family by place and season; what stays does not count.
  const grows = spots.map((_, at) =>
    families.map((_, family) =>
      Array.from({ length: seasons }, (_, season) =>
        items.reduce(
          (sum, { stays }, index) =>
            stays || familyAt[index] !== family ? sum : sum + (pieces[season]?.[at]?.[index] as number),
          0,
        ),
      ),
    ),
  );
  const free = spots.map((spot, at) =>
    Array.from(
      { length: seasons },
      (_, season) => spot.room - (pieces[season]?.[at]?.reduce((sum, each) => sum + each, 0) ?? 0),
    ),
  );
  const rules = spots.map((spot) =>
    families.map((family) => ({
      years: breaksRotation(board, spot, family) ? 0 : board.rotation(spot, family).years,
      rests: Array.from({ length: seasons }, (_, season) => restsFrom(board, spot, family, season)),
    })),
  );

  const mayGrow = (at: number, index: number, season: number): boolean => {
    if (spots[at]?.suits[index] === undefined) return false;
    const family = familyAt[index] as number;
    const rule = rules[at]?.[family];
    if (rule === undefined || rule.rests[season]) return false;
    const turns = grows[at]?.[family] as number[];
    return turns.every((size, other) => size === 0 || other === season || Math.abs(other - season) >= rule.years);
  };
  const change = (at: number, index: number, season: number, by: number): void => {
    const row = pieces[season]?.[at] as Int32Array;
    row[index] = (row[index] as number) + by;
    const turns = grows[at]?.[familyAt[index] as number] as number[];
    turns[season] = (turns[season] as number) + by;
    (free[at] as number[])[season] = (free[at]?.[season] as number) - by;
  };
  const find = (index: number, season: number, seen: Set<number>): boolean => {
    for (let at = 0; at < spots.length; at++) {
      if (seen.has(at) || (free[at]?.[season] as number) <= 0 || !mayGrow(at, index, season)) continue;
      change(at, index, season, 1);
      return true;
    }
    for (let at = 0; at < spots.length; at++) {
      if (seen.has(at) || !mayGrow(at, index, season)) continue;
      seen.add(at);
      const row = pieces[season]?.[at] as Int32Array;
      for (let other = 0; other < items.length; other++) {
        const kept = spots[at]?.fixed.get(other)?.[season] ?? 0;
        if (other === index || items[other]?.stays || (row[other] as number) <= kept) continue;
        if (!find(other, season, seen)) continue;
        change(at, other, season, -1);
        change(at, index, season, 1);
        return true;
      }
    }
    return false;
  };
  items.forEach(({ stays }, index) => {
    if (stays) return;
    const short = unmet[index] as number[];
    for (let season = 0; season < seasons; season++)
      while ((short[season] as number) > 0 && find(index, season, new Set()))
        short[season] = (short[season] as number) - 1;
  });
  return { ...choice, pieces, unmet };
}

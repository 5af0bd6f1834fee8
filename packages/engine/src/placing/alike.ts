import type { Board, Item, Spot } from './board.ts';
import type { Choice } from './read-back.ts';

/** A board on which plants that are all the same to the rules stand as one. */
export interface Merged {
  readonly board: Board;
  /** A choice on the merged board as one on the board it was made from. */
  split(choice: Choice): Choice;
}

/**
 * Takes plants of one family that may grow in the same places together, which loses nothing: a place, a season and a
 * family that hold one of them hold any of them. Plants that stay or are fixed somewhere are left alone.
 *
 * @param board with its moves settled, so that a place suits a plant or does not
 */
export function mergeAlike(board: Board): Merged {
  const { items, spots, seasons } = board;
  const groups = new Map<string, number[]>();
  items.forEach((item, index) => {
    const alone = item.stays || spots.some(({ fixed }) => fixed.has(index));
    const where = spots.map(({ suits }) => (suits[index] === undefined ? '0' : '1')).join('');
    const key = alone ? `alone ${index}` : `${item.family} ${where}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [index]);
    else group.push(index);
  });
  const members = [...groups.values()];
  const firsts = members.map((group) => group[0] as number);
  const place = new Map(firsts.map((index, at) => [index, at]));
  const demandOf = (group: readonly number[], season: number) =>
    group.reduce((sum, index) => sum + (items[index]?.demand[season] ?? 0), 0);
  const merged: Board = {
    ...board,
    items: members.map(
      (group, at): Item => ({
        ...(items[firsts[at] as number] as Item),
        demand: Array.from({ length: seasons }, (_, season) => demandOf(group, season)),
      }),
    ),
    spots: spots.map(
      (spot): Spot => ({
        ...spot,
        suits: firsts.map((index) => spot.suits[index]),
        bars: firsts.map((index) => spot.bars[index]),
        exempt: new Set([...spot.exempt].map((index) => place.get(index) as number)),
        fixed: new Map([...spot.fixed].map(([index, pieces]) => [place.get(index) as number, pieces])),
      }),
    ),
  };
  return { board: merged, split };

  function split(choice: Choice): Choice {
    const unmet = items.map(() => new Array<number>(seasons).fill(0));
    const pieces = choice.pieces.map((rows, season) => {
      const apart = rows.map(() => new Int32Array(items.length));
      members.forEach((group, at) => {
        let turn = 0;
        let left = items[group[0] as number]?.demand[season] ?? 0;
        rows.forEach((row, spot) => {
          let size = row[at] as number;
          while (size > 0) {
            // A group of one takes all there is, wished for or fixed.
            const part = group.length === 1 ? size : Math.min(size, left);
            const index = group[turn] as number;
            const mine = apart[spot] as Int32Array;
            mine[index] = (mine[index] as number) + part;
            size -= part;
            left -= part;
            if (size === 0 || group.length === 1) continue;
            turn += 1;
            left = items[group[turn] as number]?.demand[season] ?? 0;
          }
        });
        // What is short falls on the last of the group.
        group.slice(turn).forEach((index, behind) => {
          const short = behind === 0 ? left : (items[index]?.demand[season] ?? 0);
          (unmet[index] as number[])[season] = Math.max(0, short);
        });
        if (group.length === 1) (unmet[group[0] as number] as number[])[season] = choice.unmet[at]?.[season] ?? 0;
      });
      return apart;
    });
    return { ...choice, pieces, unmet };
  }
}

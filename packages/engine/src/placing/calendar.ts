import { mergeAlike } from './alike.ts';
import type { Board, Spot } from './board.ts';
import { greedy } from './greedy.ts';
import { mend } from './mend.ts';
import { buildModel } from './model.ts';
import { type Choice, readBack } from './read-back.ts';
import type { Solver } from './solver.ts';

/** The same garden with its moves settled, so that only the calendar is open. */
export function withMoves(board: Board, moves: readonly number[]): Board {
  const spots = board.spots.map((spot, at): Spot => {
    const chosen = moves[at] as number;
    if (spot.moves.length < 2) return spot;
    return {
      ...spot,
      moves: spot.moves.slice(chosen, chosen + 1),
      suits: spot.suits.map((suits) =>
        suits !== undefined && suits.from <= chosen && chosen <= suits.to ? ONLY : undefined,
      ),
    };
  });
  return { ...board, spots };
}

const ONLY = { from: 0, to: 0 };

/**
 * Finds who grows where and when for settled moves: by rounds of the greedy rule, which mostly do, else by the programme.
 *
 * @param mostUnmet pieces that may be left out
 * @returns undefined when there is no such calendar, or the solver was stopped before it found one
 */
export function calendarFor(
  board: Board,
  moves: readonly number[],
  mostUnmet: number,
  solver: Solver,
): Choice | undefined {
  const settled = withMoves(board, moves);
  const merged = mergeAlike(settled);
  const alike = quickly(merged.board, mostUnmet) ?? searched(merged.board, mostUnmet, solver);
  const found = alike === undefined ? undefined : merged.split(alike);
  if (found === undefined) return undefined;
  const moved = board.spots.reduce((sum, spot, at) => sum + (spot.moves[moves[at] as number]?.currency ?? 0), 0);
  return { ...found, moves, moved };
}

/** Rounds of the greedy rule, each with what had no place in the one before at the head of the queue. */
const ROUNDS = 60;

function quickly(board: Board, mostUnmet: number): Choice | undefined {
  for (const sought of [soughtOf(board), undefined]) {
    let queue: readonly number[] = [];
    for (let round = 0; round < ROUNDS; round++) {
      const choice = greedy(board, queue, sought);
      if (unmetOf(choice) <= mostUnmet) return choice;
      const mended = mend(board, choice);
      if (unmetOf(mended) <= mostUnmet) return mended;
      const short = mended.unmet.flatMap((list, index) => (list.some((pieces) => pieces > 0) ? [index] : []));
      queue = [...short, ...queue.filter((index) => !short.includes(index))];
    }
  }
  return undefined;
}

/** By place: the shares of their ground that all plants which may grow there need, in whole numbers so that near ones count as the same. */
function soughtOf({ spots, items, seasons }: Board): number[] {
  const shares = items.map(({ demand }, index) => {
    const room = spots.reduce((sum, spot) => sum + (spot.suits[index] === undefined ? 0 : spot.room), 0) * seasons;
    return room === 0 ? 0 : demand.reduce((sum, each) => sum + each, 0) / room;
  });
  return spots.map(({ suits }) =>
    Math.round(shares.reduce((sum, share, index) => sum + (suits[index] === undefined ? 0 : share), 0)),
  );
}

function searched(board: Board, mostUnmet: number, solver: Solver): Choice | undefined {
  const built = buildModel(board, mostUnmet > 0 ? { mostUnmet } : {});
  const { values } = solver(built.model);
  return values === undefined ? undefined : readBack(board, built, values);
}

/** Pieces left out in all seasons together. */
export const unmetOf = ({ unmet }: Choice): number =>
  unmet.reduce((sum, list) => sum + list.reduce((all, each) => all + each, 0), 0);

import type { Board, Spot } from './board.ts';
import { greedy } from './greedy.ts';
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
 * Finds who grows where and when for settled moves: by the greedy rule, which nearly always does, else by the programme.
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
  const quick = greedy(settled);
  const found = unmetOf(quick) <= mostUnmet ? quick : searched(settled, mostUnmet, solver);
  if (found === undefined) return undefined;
  const moved = board.spots.reduce((sum, spot, at) => sum + (spot.moves[moves[at] as number]?.currency ?? 0), 0);
  return { ...found, moves, moved };
}

function searched(board: Board, mostUnmet: number, solver: Solver): Choice | undefined {
  const built = buildModel(board, mostUnmet > 0 ? { mostUnmet } : {});
  const { values } = solver(built.model);
  return values === undefined ? undefined : readBack(board, built, values);
}

/** Pieces left out in all seasons together. */
export const unmetOf = ({ unmet }: Choice): number =>
  unmet.reduce((sum, list) => sum + list.reduce((all, each) => all + each, 0), 0);

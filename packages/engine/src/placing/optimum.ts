import type { Board } from './board.ts';
import { calendarFor, unmetOf } from './calendar.ts';
import { buildModel } from './model.ts';
import { buildMovesModel, type MovesModel, type MovesOptions } from './moves-model.ts';
import { type Choice, readBack } from './read-back.ts';
import type { Solved, Solver } from './solver.ts';

export interface Optimum {
  readonly choice: Choice;
  readonly proven: boolean;
  /** No choice moves less than this, kg CaCO3. */
  readonly bound: number;
}

/** A difference in kg CaCO3 that no scale shows. */
const SAME = 1e-4;

/**
 * The choice that leaves out the fewest pieces and, among those, moves least. The moves are settled with the seasons
 * taken together, which gives a floor; a calendar for those moves then proves the floor is reached. Only when no
 * calendar can be found for them is the full programme solved.
 *
 * @param cut a rule on the moves that the choice must keep, for the runner-up
 * @returns undefined when nothing keeps the cut
 */
export function optimum(board: Board, solver: Solver, cut?: MovesOptions['cut']): Optimum | undefined {
  const kept = cut === undefined ? {} : { cut };
  const together = buildMovesModel(board, kept);
  const first = solver(together.model);
  if (first.values !== undefined) {
    const quick = settled(board, together, first, 0, solver);
    if (quick !== undefined) return quick;
    const full = buildModel(board, kept);
    const solved = solver(full.model);
    if (solved.values !== undefined) return whole(readBack(board, full, solved.values), solved);
  }
  return leavingOut(board, solver, kept);
}

/** Not every wish can be met: fewest pieces left out first. */
function leavingOut(board: Board, solver: Solver, kept: MovesOptions): Optimum | undefined {
  const floor = solver(buildMovesModel(board, { ...kept, least: 'unmet' }).model);
  if (floor.values === undefined) return undefined;
  const fewest = Math.ceil(floor.objective - SAME);
  const together = buildMovesModel(board, { ...kept, mostUnmet: fewest });
  const first = solver(together.model);
  const quick = first.values === undefined ? undefined : settled(board, together, first, fewest, solver);
  if (quick !== undefined) return floor.status === 'optimal' ? quick : { ...quick, proven: false };
  const short = buildModel(board, { ...kept, least: 'unmet' });
  const least = solver(short.model);
  if (least.values === undefined) return undefined;
  const found = readBack(board, short, least.values);
  const full = buildModel(board, { ...kept, mostUnmet: unmetOf(found) });
  const solved = solver(full.model);
  if (solved.values === undefined) return { choice: found, proven: false, bound: 0 };
  const best = whole(readBack(board, full, solved.values), solved);
  return least.status === 'optimal' ? best : { ...best, proven: false };
}

function settled(
  board: Board,
  { moves }: MovesModel,
  solved: Solved,
  mostUnmet: number,
  solver: Solver,
): Optimum | undefined {
  const values = solved.values as Float64Array;
  const chosen = board.spots.map((spot, at) => {
    const columns = moves[at] ?? [];
    return columns.length === 0
      ? spot.moves.length - 1
      : columns.findIndex((column) => (values[column] as number) > 0.5);
  });
  const choice = calendarFor(board, chosen, mostUnmet, solver);
  return choice === undefined ? undefined : whole(choice, solved);
}

function whole(choice: Choice, { status, bound }: Solved): Optimum {
  return { choice, proven: status === 'optimal' || choice.moved <= bound + SAME, bound: Math.min(bound, choice.moved) };
}

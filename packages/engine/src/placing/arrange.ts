import { createRecorder } from '../derivation/derivation.ts';
import type { Message } from '../derivation/message.ts';
import { keepApart } from './apart.ts';
import type { Arrangement, Figures, RunnerUp } from './arrangement.ts';
import { type Board, boardOf } from './board.ts';
import { unmetOf } from './calendar.ts';
import { differenceOf, figuresOf } from './figures.ts';
import { greedy } from './greedy.ts';
import type { PlacingInput } from './input.ts';
import { buildModel } from './model.ts';
import { optimum } from './optimum.ts';
import { clashesOf, placedPlaces } from './placed.ts';
import type { Choice } from './read-back.ts';
import { recordObjective } from './record.ts';
import type { Solver } from './solver.ts';
import { type Hindrance, unmetWishes } from './unmet.ts';

export interface ArrangeOptions {
  /** Look for the next best way as well; costs a second search. Default true. */
  readonly runnerUp?: boolean;
  /** Keep the derivation of the objective. */
  readonly explain?: boolean;
}

/**
 * Which plants in which places, for one to three seasons, so that as little soil as possible has to be moved.
 *
 * The pH of a place holds for all its seasons, and every plant that grows there in any of them has it inside its best
 * range. Families rest as the rotation asks, perennials stay, and what the gardener fixed stays fixed. When not every
 * wish can be met, as few square metres as can be are left out first, and among those ways the least soil is moved.
 *
 * @param input places, wishes and what is settled, in SI and already checked
 * @param solver finds the proven optimum, such as `highsSolver`
 * @returns the arrangement with its reasons, the runner-up, and what a greedy gardener would have done
 * @throws RangeError as `boardOf`
 * @source `requirementOf` for what a move costs; rotation: almanac `rotations`; `docs/placing.md`
 */
export function arrange(input: PlacingInput, solver: Solver, options: ArrangeOptions = {}): Arrangement {
  const board = boardOf(input);
  const baseline = greedy(board);
  const best = optimum(board, solver);
  if (best === undefined) throw new RangeError('the solver found no way to leave wishes out');
  const { proven } = best;
  // A search that was stopped early may hold less than a gardener finds without it.
  const choice = !proven && isBetter(baseline, best.choice) ? baseline : best.choice;
  const figures = figuresOf(board, choice);
  const messages: Message[] = [];
  const runnerUp = options.runnerUp === false ? undefined : nextBest(board, choice, figures, solver, messages);
  const recorder = options.explain ? createRecorder() : undefined;
  if (recorder) recordObjective(board, choice, input.settings, proven, recorder);
  messages.unshift({ code: proven ? 'placing.proven' : 'placing.not-proven' });
  return {
    proven,
    gap: proven ? 0 : Math.max(0, choice.moved - best.bound),
    places: placedPlaces(board, choice),
    figures,
    ...(runnerUp === undefined ? {} : { runnerUp }),
    greedy: figuresOf(board, baseline),
    unmet: unmetOf(choice) === 0 ? [] : unmetWishes(board, choice, hindranceOf(board, solver)),
    clashes: clashesOf(board),
    apart: keepApart([
      ...new Map(
        [
          ...board.items.map(({ plant }) => plant),
          ...board.spots.flatMap(({ residents }) => residents.map(({ plant }) => plant)),
        ].map((plant) => [plant.key, plant]),
      ).values(),
    ]),
    messages,
    ...(recorder === undefined ? {} : { derivation: recorder.derivation() }),
  };
}

const isBetter = (a: Choice, b: Choice): boolean =>
  unmetOf(a) < unmetOf(b) || (unmetOf(a) === unmetOf(b) && a.moved < b.moved);

/** What stands in the way of meeting every wish: it is in the way when all can be met without it. */
function hindranceOf(board: Board, solver: Solver): Hindrance {
  if (solver(buildModel(board, { noRotation: true }).model).values !== undefined) return 'rotation';
  const spots = board.spots.map((spot) => ({
    ...spot,
    moves: spot.moves.slice(0, 1),
    suits: spot.bars.map((bar) => (bar === undefined || bar === 'ph' ? { from: 0, to: 0 } : undefined)),
  }));
  return solver(buildModel({ ...board, spots }).model).values === undefined ? 'room' : 'ph';
}

/**
 * The best way that leaves at least one of the moved places as it is.
 */
function nextBest(
  board: Board,
  choice: Choice,
  figures: Figures,
  solver: Solver,
  messages: Message[],
): RunnerUp | undefined {
  if (figures.places === 0) {
    messages.push({ code: 'placing.no-move-needed' });
    return undefined;
  }
  const next = optimum(board, solver, (moves) => leavingOneAlone(board, choice, moves));
  if (next === undefined || unmetOf(next.choice) > unmetOf(choice)) {
    messages.push({ code: 'placing.no-other-way' });
    return undefined;
  }
  const nextFigures = figuresOf(board, next.choice);
  const saved = differenceOf(nextFigures, figures);
  const said: Message =
    saved.currency > 1e-4
      ? { code: 'placing.saves', parameters: { currency: { value: saved.currency, dimension: 'mass' } } }
      : { code: 'placing.as-good' };
  return { figures: nextFigures, saved, places: placedPlaces(board, next.choice), messages: [said] };
}

/** At least one place that is moved now is left as it is. */
function leavingOneAlone(board: Board, choice: Choice, moves: readonly (readonly number[])[]) {
  const columns: number[] = [];
  let most = -1;
  board.spots.forEach((spot, at) => {
    const isMove = (move: number) => (spot.moves[move]?.direction ?? 'none') !== 'none';
    // A place with one way only has no way of being left alone.
    if (!isMove(choice.moves[at] as number) || spot.moves.length < 2) return;
    most++;
    moves[at]?.forEach((column, move) => {
      if (isMove(move)) columns.push(column);
    });
  });
  return { columns, most };
}

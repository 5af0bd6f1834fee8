import { fileURLToPath } from 'node:url';
import { arrange, highsSolver, type Solver } from '@sorrel/engine/placing';
import loadHighs from 'highs';
import { median } from './measure.ts';
import { placingGarden } from './placing-garden.ts';

export interface PlacingBench {
  readonly places: number;
  readonly plants: number;
  readonly seasons: number;
  readonly gardens: readonly PlacedGarden[];
  /** Median over the gardens. */
  readonly ratio: number;
}

export interface PlacedGarden {
  readonly seed: number;
  readonly proven: boolean;
  /** Seconds of the whole call without a runner-up, and of the solver inside it. */
  readonly whole: number;
  readonly solver: number;
  readonly ratio: number;
  /** kg CaCO3 moved by the choice, and by placing plant by plant. */
  readonly moved: number;
  readonly greedy: number;
  /** Area times seasons that placing plant by plant leaves out and the choice does not, m². */
  readonly greedyUnmet: number;
}

/** Each search of the solver gives up after so long; a garden that needs longer is told as not proven. */
const SECONDS = 60;

/**
 * Times placing against the solver's own time on the same models in the same call, and holds it against greedy placing.
 *
 * @param seeds one made-up garden each
 */
export async function placingBench(
  places: number,
  plants: number,
  seasons: 1 | 2 | 3,
  seeds: readonly number[],
): Promise<PlacingBench> {
  // Where the package keeps its own WebAssembly, since the bench itself is bundled.
  const wasm = fileURLToPath(import.meta.resolve('highs/runtime'));
  const solve = highsSolver(await loadHighs({ locateFile: () => wasm }), SECONDS);
  let spent = 0;
  const timedSolver: Solver = (model, nodes) => {
    const start = performance.now();
    const found = solve(model, nodes);
    spent += performance.now() - start;
    return found;
  };
  // The first call compiles the solver, which is no one's work.
  arrange(placingGarden(0, 6, 6, seasons), timedSolver);
  const gardens = seeds.map((seed): PlacedGarden => {
    const garden = placingGarden(seed, places, plants, seasons);
    spent = 0;
    const start = performance.now();
    const found = arrange(garden, timedSolver, { runnerUp: false });
    const whole = performance.now() - start;
    const solver = spent;
    return {
      seed,
      proven: found.proven,
      whole: whole / 1000,
      solver: solver / 1000,
      ratio: whole / solver,
      moved: found.figures.currency,
      greedy: found.greedy.currency,
      greedyUnmet: found.greedy.unmet - found.figures.unmet,
    };
  });
  return { places, plants, seasons, gardens, ratio: median(gardens.map(({ ratio }) => ratio)) };
}

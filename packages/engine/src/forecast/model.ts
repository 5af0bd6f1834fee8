import { run } from './kernel.ts';
import { FLUXES } from './ledger.ts';
import type { ParameterSet } from './parameter-set.ts';
import { type Scenario, type ScenarioOptions, scenario, stepDates } from './scenario.ts';
import type { ForecastInput } from './types.ts';

export interface Simulation {
  readonly scenario: Scenario;
  readonly dates: readonly string[];
  /** pH of the bed at the start and after every step. */
  readonly ph: Float64Array;
  /** pH by layer, `[step * layers + layer]`. */
  readonly layerPh: Float64Array;
  /** Share of each shrinking material left, `[step * charges + charge]`. */
  readonly left: Float64Array;
  /** kg CaCO3/m² by step and flux (`FLUXES`), of the reported layers. */
  readonly ledger: Float64Array;
  /** Base content of the reported layers, kg CaCO3/m², `[start, end]`, read from the state. */
  readonly content: Float64Array;
}

/**
 * One deterministic run of the model with given parameters: weekly pH, layer by layer, with every flux booked.
 *
 * @param input the place, its weather, materials and yearly inputs
 * @param parameters one member, e.g. `centralSet(input)`
 */
export function simulate(input: ForecastInput, parameters: ParameterSet, options: ScenarioOptions = {}): Simulation {
  if (parameters.count !== 1) throw new RangeError('simulate runs one member');
  const shared = scenario(input, options);
  const { steps, layers, charges } = shared;
  const output = {
    ph: new Float64Array(steps + 1),
    layerPh: new Float64Array((steps + 1) * layers),
    left: new Float64Array((steps + 1) * charges.count),
    ledger: new Float64Array(steps * FLUXES.length),
    content: new Float64Array(2),
  };
  run(shared, parameters, output);
  return { scenario: shared, dates: stepDates(input, steps, shared.stepDays), ...output };
}

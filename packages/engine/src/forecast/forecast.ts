import type { Recorder } from '../derivation/derivation.ts';
import { account } from './account.ts';
import { cautions } from './cautions.ts';
import { checkForecast } from './check.ts';
import { ensemble } from './ensemble.ts';
import { simulate } from './model.ts';
import { centralSet, drawParameters, medianSet } from './parameter-set.ts';
import { P } from './parameters.ts';
import { createRandom } from './random.ts';
import { recordForecast } from './record.ts';
import { retestDate } from './retest.ts';
import { scenario, stepDates } from './scenario.ts';
import type { Forecast, ForecastInput } from './types.ts';

export const MEMBERS = 2000;
export const SEED = 1;

/**
 * What the pH of a place will do: weekly median and bands over up to five years, the chance of being inside the plants'
 * range, the chance of overshooting, when to test again, and the account of what pushed it.
 *
 * The same input and seed give the same answer everywhere. Bands hold what is unknown: the present pH, the soil's
 * resistance, the speed of the materials, the drift (spreads in the almanac's `model-parameters`), and the model itself.
 *
 * @throws RangeError for input that `checkForecast` finds fault with; call that first for sentences to show
 * Model, symbols and sources: `docs/model.md`.
 */
export function forecast(input: ForecastInput, recorder?: Recorder): Forecast {
  const problems = checkForecast(input);
  if (problems.length > 0) throw new RangeError(problems.map((p) => `${p.field}: ${p.message}`).join(' '));
  const seed = input.seed ?? SEED;
  const random = createRandom(seed);
  const set = input.parameters ?? drawParameters(input, input.members ?? MEMBERS, random);
  const shared = scenario(input);
  const summary = ensemble({
    scenario: shared,
    set,
    random,
    testSd: input.testSd ?? P.testLab,
    ...(input.range === undefined ? {} : { range: input.range }),
    ...(input.safe === undefined ? {} : { safe: input.safe }),
  });
  const dates = stepDates(input, shared.steps, shared.stepDays);
  const central = input.parameters === undefined ? centralSet(input) : medianSet(input.parameters);
  const run = simulate(input, central);
  const { range } = input;
  const insideAt = range === undefined ? -1 : summary.median.findIndex((ph) => ph >= range.low && ph <= range.high);
  const insideFrom = insideAt < 0 ? undefined : dates[insideAt];
  const last = input.applications
    .map((application) => application.date)
    .sort()
    .at(-1);
  const result: Forecast = {
    dates,
    median: summary.median,
    bands: summary.bands,
    retestBands: summary.retestBands,
    inside: summary.inside,
    insideBy: summary.insideBy,
    ...(summary.overshoot === undefined ? {} : { overshoot: summary.overshoot }),
    ...(insideFrom === undefined ? {} : { insideFrom }),
    retest: retestDate({
      dates,
      inside: summary.inside,
      median: summary.median,
      container: input.container ?? false,
      ...(last === undefined ? {} : { lastApplication: last }),
    }),
    account: account(input, run),
    cautions: cautions(input, summary),
    members: set.count,
    seed,
    evaluated: summary.evaluated,
  };
  if (recorder) recordForecast(recorder, input, result, run);
  return result;
}

import { checkForecast } from './check.ts';
import { YEAR_DAYS } from './dates.ts';
import { run } from './kernel.ts';
import { drawParameters } from './parameter-set.ts';
import { P } from './parameters.ts';
import { createRandom } from './random.ts';
import { scenario, stepDates } from './scenario.ts';
import type { Band, Forecast, ForecastInput } from './types.ts';

/** What is drawn of a forecast. */
export type Sketch = Pick<Forecast, 'dates' | 'median' | 'bands'>;

/** Members of a sketch: their middle and their bands are rough, but follow a slider in the same frame. */
export const SKETCH_MEMBERS = 40;
const STEP_DAYS = 21;
const SHARES = [0.5, 0.8] as const;
/** Steps between the knots of a member's random walk, about a quarter of a year. */
const EVERY = 4;

/**
 * A forecast's picture and nothing else, in a small part of its time, to look at while a slider moves: few members, steps
 * of three weeks, median and two bands. No dose may rest on it.
 *
 * @throws RangeError for input that `checkForecast` finds fault with
 * Model: `docs/model.md`.
 */
export function sketch(input: ForecastInput): Sketch {
  const problems = checkForecast(input);
  if (problems.length > 0) throw new RangeError(problems.map((p) => `${p.field}: ${p.message}`).join(' '));
  const random = createRandom(input.seed ?? 1);
  const set = input.parameters ?? drawParameters(input, input.members ?? SKETCH_MEMBERS, random);
  const shared = scenario(input, { stepDays: STEP_DAYS });
  const { steps } = shared;
  const { count } = set;
  const ph = new Float32Array((steps + 1) * count);
  run(shared, set, { ph });
  const knotSd = P.process * Math.sqrt((EVERY * STEP_DAYS) / YEAR_DAYS);
  const walk = new Float64Array(count);
  const slope = new Float64Array(count);
  const row = new Float64Array(count);
  const median: number[] = [];
  const bands: (Band & { readonly low: number[]; readonly high: number[] })[] = SHARES.map((share) => ({
    share,
    low: [],
    high: [],
  }));
  for (let t = 0; t <= steps; t++) {
    if (t % EVERY === 0) for (let m = 0; m < count; m++) slope[m] = (knotSd * random.normal()) / EVERY;
    for (let m = 0; m < count; m++) {
      row[m] = (ph[t * count + m] as number) + (walk[m] as number);
      walk[m] = (walk[m] as number) + (slope[m] as number);
    }
    row.sort();
    median.push(quantile(row, 0.5));
    for (const { share, low, high } of bands) {
      low.push(quantile(row, (1 - share) / 2));
      high.push(quantile(row, (1 + share) / 2));
    }
  }
  return { dates: stepDates(input, steps, STEP_DAYS), median, bands };
}

/** Straight between the members beside it. */
function quantile(sorted: Float64Array, share: number): number {
  const at = share * (sorted.length - 1);
  const below = Math.floor(at);
  const [low, high] = [sorted[below] as number, sorted[Math.min(below + 1, sorted.length - 1)] as number];
  return low + (at - below) * (high - low);
}

import { YEAR_DAYS } from './dates.ts';
import { run } from './kernel.ts';
import type { ParameterSet } from './parameter-set.ts';
import { P } from './parameters.ts';
import { CELLS, cellOf, drainQuantiles } from './quantiles.ts';
import type { Random } from './random.ts';
import type { Scenario } from './scenario.ts';
import type { Band } from './types.ts';

/** Bands given, and the seven quantiles they and the median need. */
export const BAND_SHARES = [0.95, 0.8, 0.5] as const;
const SHARES = [0.025, 0.1, 0.25, 0.5, 0.75, 0.9, 0.975];
/** Steps between the knots of a member's random walk; straight in between. */
const KNOT_DAYS = 91;

export interface EnsembleInput {
  readonly scenario: Scenario;
  readonly set: ParameterSet;
  readonly random: Random;
  readonly testSd: number;
  readonly range?: { readonly low: number; readonly high: number };
  readonly safe?: { readonly low: number; readonly high: number };
}

export interface Ensemble {
  readonly median: readonly number[];
  readonly bands: readonly Band[];
  readonly retestBands: readonly Band[];
  readonly inside: readonly number[];
  readonly insideBy: readonly number[];
  readonly overshoot?: { readonly above: number; readonly below: number };
  /** pH of every member, `[step * count + member]`, without the random walk of the model's own noise. */
  readonly ph: Float32Array;
  readonly evaluated: number;
}

function bandsOf(rows: readonly Float64Array[]): Band[] {
  return BAND_SHARES.map((share, i) => ({
    share,
    low: rows.map((row) => row[i] as number),
    high: rows.map((row) => row[SHARES.length - 1 - i] as number),
  })).reverse();
}

/** Share of members flagged. */
function shareOf(flags: Uint8Array): number {
  let sum = 0;
  for (let m = 0; m < flags.length; m++) sum += flags[m] as number;
  return sum / flags.length;
}

/**
 * Runs every member and sums them up week by week. To each is added what the model does not know: a random walk of
 * 0.1 pH per square root of a year (TEXT, from memory), drawn at quarterly knots; a retest adds the error of the test.
 */
export function ensemble(input: EnsembleInput): Ensemble {
  const { scenario, set, random, testSd, range } = input;
  const safe = input.safe ?? range;
  const { steps, stepDays } = scenario;
  const { count } = set;
  const ph = new Float32Array((steps + 1) * count);
  const evaluated = run(scenario, set, { ph });

  const every = Math.max(1, Math.round(KNOT_DAYS / stepDays));
  const knotSd = P.process * Math.sqrt((every * stepDays) / YEAR_DAYS);
  const walk = new Float64Array(count);
  const slope = new Float64Array(count);
  const testError = Float64Array.from({ length: count }, () => testSd * random.normal());
  const counts = new Int32Array(CELLS);
  const retests = new Int32Array(CELLS);
  const quantiles: Float64Array[] = [];
  const retestQuantiles: Float64Array[] = [];
  const inside: number[] = [];
  const insideBy: number[] = [];
  const low = range?.low ?? Number.POSITIVE_INFINITY;
  const high = range?.high ?? Number.NEGATIVE_INFINITY;
  const safeLow = safe?.low ?? Number.NEGATIVE_INFINITY;
  const safeHigh = safe?.high ?? Number.POSITIVE_INFINITY;
  const been = new Uint8Array(count);
  const above = new Uint8Array(count);
  const below = new Uint8Array(count);
  for (let t = 0; t <= steps; t++) {
    const since = t === 0 ? 0 : ((t - 1) % every) + 1;
    if (since === 1)
      for (let m = 0; m < count; m++) {
        walk[m] = (walk[m] as number) + (slope[m] as number) * (t === 1 ? 0 : every);
        slope[m] = (knotSd * random.normal()) / every;
      }
    let insideNow = 0;
    const row = t * count;
    for (let m = 0; m < count; m++) {
      const at = (ph[row + m] as number) + (walk[m] as number) + since * (slope[m] as number);
      const cell = cellOf(at);
      counts[cell] = (counts[cell] as number) + 1;
      const printed = cellOf(at + (testError[m] as number));
      retests[printed] = (retests[printed] as number) + 1;
      if (at >= low && at <= high) {
        insideNow++;
        been[m] = 1;
      }
      if (at > safeHigh) above[m] = 1;
      if (at < safeLow) below[m] = 1;
    }
    // The start itself is no overshoot.
    if (t === 0) {
      above.fill(0);
      below.fill(0);
    }
    const one = new Float64Array(SHARES.length);
    drainQuantiles(counts, SHARES, count, one);
    quantiles.push(one);
    const two = new Float64Array(SHARES.length);
    drainQuantiles(retests, SHARES, count, two);
    retestQuantiles.push(two);
    if (range !== undefined) {
      inside.push(insideNow / count);
      insideBy.push(shareOf(been));
    }
  }
  return {
    median: quantiles.map((row) => row[3] as number),
    bands: bandsOf(quantiles),
    retestBands: bandsOf(retestQuantiles),
    inside,
    insideBy,
    ...(safe === undefined
      ? {}
      : {
          overshoot: { above: shareOf(above), below: shareOf(below) },
        }),
    ph,
    evaluated,
  };
}

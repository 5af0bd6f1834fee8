import { YEAR_DAYS } from './dates.ts';
import { run } from './kernel.ts';
import type { ParameterSet } from './parameter-set.ts';
import { P } from './parameters.ts';
import { drainQuantiles } from './quantiles.ts';
import type { Random } from './random.ts';
import type { Scenario } from './scenario.ts';
import { ABOVE, BELOW, createTally, INSIDE, shareMarked, tallyWeek } from './tally.ts';
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
  const tally = createTally(count);
  const { members, marks } = tally;
  const slopes = members.subarray(count, 2 * count);
  const testErrors = members.subarray(2 * count);
  random.normals(testErrors);
  for (let m = 0; m < count; m++) testErrors[m] = testSd * (testErrors[m] as number);
  const ends = {
    low: range?.low ?? Number.POSITIVE_INFINITY,
    high: range?.high ?? Number.NEGATIVE_INFINITY,
    safeLow: safe?.low ?? Number.NEGATIVE_INFINITY,
    safeHigh: safe?.high ?? Number.POSITIVE_INFINITY,
  };
  const quantiles: Float64Array[] = [];
  const retestQuantiles: Float64Array[] = [];
  const inside: number[] = [];
  const insideBy: number[] = [];
  for (let t = 0; t <= steps; t++) {
    const since = t === 0 ? 0 : ((t - 1) % every) + 1;
    if (since === 1) {
      for (let m = 0; m < count; m++) members[m] = (members[m] as number) + (slopes[m] as number) * every;
      random.normals(slopes);
      for (let m = 0; m < count; m++) slopes[m] = (knotSd * (slopes[m] as number)) / every;
    }
    tallyWeek(tally, ph, t * count, since, ends);
    // The start itself is no overshoot.
    if (t === 0) for (let m = 0; m < count; m++) marks[m] = (marks[m] as number) & INSIDE;
    const one = new Float64Array(SHARES.length);
    drainQuantiles(tally.cells, SHARES, count, one);
    quantiles.push(one);
    const two = new Float64Array(SHARES.length);
    drainQuantiles(tally.retestCells, SHARES, count, two);
    retestQuantiles.push(two);
    if (range !== undefined) {
      inside.push(tally.inside / count);
      insideBy.push(tally.been / count);
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
          overshoot: { above: shareMarked(tally, ABOVE), below: shareMarked(tally, BELOW) },
        }),
    ph,
    evaluated,
  };
}

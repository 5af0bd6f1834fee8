import type { Random } from '../forecast/random.ts';
import type { IsoDate } from '../units/si.ts';
import type { Sample } from './sampler.ts';
import type { Present } from './types.ts';
import { follow, type Readings, type WalkState } from './walk.ts';
import { ascending, weightedQuantiles } from './weighted.ts';

const SHARES = [0.5, 0.8, 0.95] as const;

export interface PresentInput {
  readonly sampled: Sample;
  /** All readings, those that may not teach the resistance too. */
  readonly readings: Readings;
  readonly observed: Float64Array;
  /** Column of the sample's figures that belongs to each reading, and that of today. */
  readonly columns: readonly number[];
  readonly today: number;
  /** Years from the last reading to today. */
  readonly since: number;
  readonly date: IsoDate;
  readonly random: Random;
}

/** Today's pH: the members' runs, each led by the readings as far as the model does not know better. */
export function presentOf(input: PresentInput): { readonly present: Present; readonly draws: Float64Array } {
  const { sampled, readings, observed, columns, random } = input;
  const { count, rows, y, weights } = sampled;
  const n = observed.length;
  const draws = new Float64Array(count);
  const errors = new Float64Array(n);
  const prefix = new Float64Array(n);
  const state: WalkState = { mean: 0, variance: 0 };
  let mean = 0;
  let square = 0;
  for (let m = 0; m < count; m++) {
    for (let i = 0; i < n; i++) errors[i] = (observed[i] as number) - (y[m * rows + (columns[i] as number)] as number);
    follow(readings, errors, state, prefix);
    const at = (y[m * rows + input.today] as number) + state.mean;
    const variance = state.variance + readings.walk * input.since;
    draws[m] = at + Math.sqrt(variance) * random.normal();
    mean += (weights[m] as number) * at;
    square += (weights[m] as number) * (at * at + variance);
  }
  const order = ascending(draws);
  const quantile = (shares: readonly number[]) => weightedQuantiles(draws, weights, shares, order);
  const bands = SHARES.map((share) => {
    const [low, high] = quantile([(1 - share) / 2, (1 + share) / 2]) as [number, number];
    return { share, low, high };
  });
  const [median] = quantile([0.5]) as [number];
  return {
    present: { date: input.date, mean, sd: Math.sqrt(Math.max(0, square - mean * mean)), median, bands },
    draws,
  };
}

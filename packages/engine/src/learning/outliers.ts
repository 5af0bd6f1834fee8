import type { PhEstimate } from '../soil/soil.ts';
import { normalised, type Sample } from './sampler.ts';
import { around, type Readings, type WalkState } from './walk.ts';

/** Standard errors from what the others let expect at which a reading is pointed out (judgement). */
export const OUTLIER = 3;
/** Readings nearer than this to the middle of all members are not looked at twice. */
const LOOK = 1.5;

export interface Odd {
  readonly reading: number;
  /** What all the other readings let expect. */
  readonly expected: PhEstimate;
  /** Standard errors, its own error included. */
  readonly off: number;
}

/**
 * Readings that do not fit with the others. Each suspect is left out in turn, the rest is learned from again (the same
 * members, other weights; the walk is told by the readings before and after), and what they let expect is compared.
 * Nothing is thrown away: the reading goes on counting as much as Student's error lets it.
 */
export function oddReadings(sampled: Sample, readings: Readings, observed: Float64Array): Odd[] {
  const n = observed.length;
  if (n < 2) return [];
  const odd: Odd[] = [];
  for (let i = 0; i < n; i++) {
    if (!suspect(sampled, readings, observed, i)) continue;
    const { mean, sd } = expectedAt(sampled, readings, observed, i);
    const off = ((observed[i] as number) - mean) / Math.hypot(sd, readings.sd[i] as number);
    if (Math.abs(off) > OUTLIER) odd.push({ reading: i, expected: { mean, sd }, off });
  }
  return odd;
}

function suspect({ y, weights, rows, count }: Sample, readings: Readings, observed: Float64Array, i: number): boolean {
  let mean = 0;
  for (let m = 0; m < count; m++) mean += (weights[m] as number) * (y[m * rows + i] as number);
  const sd = Math.hypot(readings.sd[i] as number, Math.sqrt(readings.walk * Math.min(1, readings.years[i] as number)));
  return Math.abs((observed[i] as number) - mean) > LOOK * sd;
}

/** pH on the day of one reading as all the other readings let expect it. */
export function expectedAt(sampled: Sample, readings: Readings, observed: Float64Array, skip: number): PhEstimate {
  const { count, rows, y, base } = sampled;
  const n = observed.length;
  const logs = new Float64Array(count);
  const means = new Float64Array(count);
  const variances = new Float64Array(count);
  const errors = new Float64Array(n);
  const state: WalkState = { mean: 0, variance: 0 };
  for (let m = 0; m < count; m++) {
    for (let i = 0; i < n; i++) errors[i] = (observed[i] as number) - (y[m * rows + i] as number);
    logs[m] = (base[m] as number) + around(readings, errors, skip, state);
    means[m] = (y[m * rows + skip] as number) + state.mean;
    variances[m] = state.variance;
  }
  const weights = normalised(logs);
  let mean = 0;
  let square = 0;
  for (let m = 0; m < count; m++) {
    const weight = weights[m] as number;
    mean += weight * (means[m] as number);
    square += weight * ((means[m] as number) ** 2 + (variances[m] as number));
  }
  return { mean, sd: Math.sqrt(Math.max(0, square - mean * mean)) };
}

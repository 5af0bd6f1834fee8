/** Roots and weights of Gauss and Hermite's rule of seven points, for a standard normal (any table of quadratures). */
const NODES = [
  -3.750439717725742, -2.366759410734541, -1.154405394739968, 0, 1.154405394739968, 2.366759410734541,
  3.750439717725742,
];
const SHARES = [
  0.000548268855972218, 0.0307571239675865, 0.240123178605013, 0.457142857142857, 0.240123178605013, 0.0307571239675865,
  0.000548268855972218,
];

/** A finer, even grid for walks that have become wider than the test's own error. */
const WIDE = 33;
const WIDE_REACH = 4.5;
const wideNodes = Array.from({ length: WIDE }, (_, i) => WIDE_REACH * ((2 * i) / (WIDE - 1) - 1));
const wideRaw = wideNodes.map((x) => Math.exp(-0.5 * x * x));
const wideTotal = wideRaw.reduce((sum, weight) => sum + weight, 0);
const wideShares = wideRaw.map((weight) => weight / wideTotal);

/** Degrees of freedom of a test's error: `student` has 4, so that one wild reading does not drag the rest along. */
export type ErrorLaw = 'student' | 'normal';

export interface Readings {
  /** Years after the start, rising. */
  readonly years: Float64Array;
  readonly sd: Float64Array;
  readonly law: ErrorLaw;
  /** Variance that the bed gains in a year beyond the model, pH². */
  readonly walk: number;
}

/** Mean and variance of the walk. */
export interface WalkState {
  mean: number;
  variance: number;
}

/** Density of a test's error but for a constant: Student-t with 4 degrees, `(1 + (e/s)²/4)^(−5/2)/s`. */
function student(error: number, sd: number): number {
  const z = error / sd;
  const u = 1 + 0.25 * z * z;
  return 1 / (u * u * Math.sqrt(u) * sd);
}

/**
 * Takes one reading into the walk and returns the logarithm of its chance (but for a constant).
 *
 * With normal errors this is Kalman's step and exact. With Student's errors the chance is integrated over the walk, and
 * the walk afterwards is replaced by the normal curve of the same mean and variance.
 *
 * @param error reading less what the model says without the walk
 */
export function absorb(state: WalkState, error: number, sd: number, law: ErrorLaw): number {
  const { mean, variance } = state;
  if (law === 'normal') {
    const all = variance + sd * sd;
    const gain = variance / all;
    const off = error - mean;
    state.mean = mean + gain * off;
    state.variance = variance * (1 - gain);
    return -0.5 * (Math.log(all) + (off * off) / all);
  }
  if (variance <= 0) return Math.log(student(error - mean, sd));
  const root = Math.sqrt(variance);
  const wide = root > sd;
  const nodes = wide ? wideNodes : NODES;
  const shares = wide ? wideShares : SHARES;
  let chance = 0;
  let first = 0;
  let second = 0;
  for (let k = 0; k < nodes.length; k++) {
    const x = nodes[k] as number;
    const part = (shares[k] as number) * student(error - mean - root * x, sd);
    chance += part;
    first += part * x;
    second += part * x * x;
  }
  const shift = first / chance;
  state.mean = mean + root * shift;
  state.variance = variance * Math.max(1e-12, second / chance - shift * shift);
  return Math.log(chance);
}

/**
 * Follows the walk `dW ~ N(0, walk·dt)` through all readings: how likely they are, given what the model says.
 *
 * @param errors reading less model, one a reading
 * @param prefix filled with the logarithm of the chance of the first, the first two, ... readings
 * @param state left at the last reading
 */
export function follow(
  readings: Readings,
  errors: Float64Array,
  state: WalkState,
  prefix: Float64Array,
  at = 0,
  skip = -1,
): number {
  state.mean = 0;
  state.variance = 0;
  let log = 0;
  let before = 0;
  for (let i = 0; i < readings.years.length; i++) {
    const now = readings.years[i] as number;
    state.variance += readings.walk * (now - before);
    before = now;
    if (i !== skip) log += absorb(state, errors[i] as number, readings.sd[i] as number, readings.law);
    prefix[at + i] = log;
  }
  return log;
}

/**
 * The walk at one reading as all the other readings tell it, earlier and later (Rauch, Tung and Striebel's smoother).
 *
 * @returns the logarithm of the chance of the other readings
 */
export function around(readings: Readings, errors: Float64Array, skip: number, state: WalkState): number {
  const n = readings.years.length;
  const means = new Float64Array(n);
  const variances = new Float64Array(n);
  state.mean = 0;
  state.variance = 0;
  let log = 0;
  let before = 0;
  for (let i = 0; i < n; i++) {
    const now = readings.years[i] as number;
    state.variance += readings.walk * (now - before);
    before = now;
    if (i !== skip) log += absorb(state, errors[i] as number, readings.sd[i] as number, readings.law);
    means[i] = state.mean;
    variances[i] = state.variance;
  }
  for (let i = n - 2; i >= skip; i--) {
    const step = readings.walk * ((readings.years[i + 1] as number) - (readings.years[i] as number));
    const predicted = (variances[i] as number) + step;
    const gain = predicted > 0 ? (variances[i] as number) / predicted : 0;
    state.mean = (means[i] as number) + gain * (state.mean - (means[i] as number));
    state.variance = (variances[i] as number) + gain * gain * (state.variance - predicted);
  }
  return log;
}

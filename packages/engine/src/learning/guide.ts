import { cholesky, choleskySolve } from './matrix.ts';
import type { Readings } from './walk.ts';

/** A normal curve over the latent values: where to look. */
export interface Guide {
  readonly mean: Float64Array;
  readonly covariance: Float64Array;
}

/** Readings' variances are widened by this in the guide, so that its draws reach past the answer. */
const REACH = 1.5;
const ROUNDS = 3;

/** Straight lines through a sample of runs: `y_i ≈ a_i + sum_j h_ij z_j`, with the variance each leaves unexplained. */
export function straightLines(
  z: Float64Array,
  y: Float64Array,
  count: number,
  dims: number,
  rows: number,
  stride = rows,
): { readonly a: Float64Array; readonly h: Float64Array; readonly rest: Float64Array } {
  const p = dims + 1;
  const normal = new Float64Array(p * p);
  const right = Array.from({ length: rows }, () => new Float64Array(p));
  const x = new Float64Array(p);
  x[0] = 1;
  for (let m = 0; m < count; m++) {
    for (let j = 0; j < dims; j++) x[j + 1] = z[m * dims + j] as number;
    for (let a = 0; a < p; a++) {
      const xa = x[a] as number;
      for (let b = 0; b < p; b++) normal[a * p + b] = (normal[a * p + b] as number) + xa * (x[b] as number);
      for (let i = 0; i < rows; i++) {
        const side = right[i] as Float64Array;
        side[a] = (side[a] as number) + xa * (y[m * stride + i] as number);
      }
    }
  }
  for (let a = 0; a < p; a++) normal[a * p + a] = (normal[a * p + a] as number) + 1e-6 * count;
  const lower = cholesky(normal, p);
  const a = new Float64Array(rows);
  const h = new Float64Array(rows * dims);
  const rest = new Float64Array(rows);
  for (let i = 0; i < rows; i++) {
    const line = choleskySolve(lower, p, right[i] as Float64Array);
    a[i] = line[0] as number;
    for (let j = 0; j < dims; j++) h[i * dims + j] = line[j + 1] as number;
  }
  for (let m = 0; m < count; m++)
    for (let i = 0; i < rows; i++) {
      let expected = a[i] as number;
      for (let j = 0; j < dims; j++) expected += (h[i * dims + j] as number) * (z[m * dims + j] as number);
      rest[i] = (rest[i] as number) + ((y[m * stride + i] as number) - expected) ** 2 / Math.max(1, count - p);
    }
  return { a, h, rest };
}

/**
 * Where the answer lies if the model were straight: Kalman's step from a standard normal prior on the latent values,
 * with readings that do not fit counted less. Only a guide for the sampler, whose weights put right what it gets wrong.
 */
export function guideTo(
  lines: ReturnType<typeof straightLines>,
  dims: number,
  readings: Readings,
  observed: Float64Array,
): Guide {
  const n = observed.length;
  const { a, h, rest } = lines;
  const off = Float64Array.from(observed, (value, i) => value - (a[i] as number));
  const base = new Float64Array(n * n);
  for (let i = 0; i < n; i++)
    for (let k = 0; k < n; k++) {
      let sum = readings.walk * Math.min(readings.years[i] as number, readings.years[k] as number);
      for (let j = 0; j < dims; j++) sum += (h[i * dims + j] as number) * (h[k * dims + j] as number);
      base[i * n + k] = sum;
    }
  const noise = Float64Array.from(readings.sd, (sd, i) => sd * sd + (rest[i] as number));
  const weights = new Float64Array(n).fill(1);
  const mean = new Float64Array(dims);
  for (let round = 0; round < (readings.law === 'student' ? ROUNDS : 1); round++) {
    const { lower } = decompose(base, noise, weights, n, 1);
    const solved = choleskySolve(lower, n, off.slice());
    for (let j = 0; j < dims; j++) {
      let sum = 0;
      for (let i = 0; i < n; i++) sum += (h[i * dims + j] as number) * (solved[i] as number);
      mean[j] = sum;
    }
    // What is left of reading i after the fit is its noise times the solved weight.
    for (let i = 0; i < n; i++) {
      const left = ((noise[i] as number) / (weights[i] as number)) * (solved[i] as number);
      weights[i] = 5 / (4 + (left * left) / (noise[i] as number));
    }
  }
  const { lower } = decompose(base, noise, weights, n, REACH);
  const covariance = new Float64Array(dims * dims);
  const columns = Array.from({ length: dims }, (_, j) =>
    choleskySolve(
      lower,
      n,
      Float64Array.from({ length: n }, (__, i) => h[i * dims + j] as number),
    ),
  );
  for (let j = 0; j < dims; j++)
    for (let k = 0; k < dims; k++) {
      let sum = 0;
      for (let i = 0; i < n; i++) sum += (h[i * dims + j] as number) * ((columns[k] as Float64Array)[i] as number);
      covariance[j * dims + k] = (j === k ? 1 : 0) - sum;
    }
  for (let j = 0; j < dims; j++)
    for (let k = 0; k < j; k++) {
      const middle = ((covariance[j * dims + k] as number) + (covariance[k * dims + j] as number)) / 2;
      covariance[j * dims + k] = middle;
      covariance[k * dims + j] = middle;
    }
  return { mean, covariance };
}

function decompose(base: Float64Array, noise: Float64Array, weights: Float64Array, n: number, reach: number) {
  const all = base.slice();
  for (let i = 0; i < n; i++)
    all[i * n + i] = (all[i * n + i] as number) + (reach * (noise[i] as number)) / (weights[i] as number);
  return { lower: cholesky(all, n) };
}

import { describe, expect, it } from 'vitest';
import { createRandom } from '../forecast/random.ts';
import { capacityFromRetest } from './capacity-grid.ts';
import { sample } from './sampler.ts';
import { follow, type WalkState } from './walk.ts';
import { weightedMoments } from './weighted.ts';

/** Solves a small system by Gauss's elimination: the witness shares no code with the sampler. */
function solve(matrix: number[][], right: number[]): number[] {
  const a = matrix.map((row, i) => [...row, right[i] as number]);
  const n = a.length;
  for (let i = 0; i < n; i++) {
    let pivot = i;
    for (let k = i; k < n; k++) if (Math.abs(a[k]?.[i] ?? 0) > Math.abs(a[pivot]?.[i] ?? 0)) pivot = k;
    [a[i], a[pivot]] = [a[pivot] as number[], a[i] as number[]];
    for (let k = 0; k < n; k++) {
      if (k === i) continue;
      const by = (a[k]?.[i] as number) / (a[i]?.[i] as number);
      for (let j = i; j <= n; j++) (a[k] as number[])[j] = (a[k]?.[j] as number) - by * (a[i]?.[j] as number);
    }
  }
  return a.map((row, i) => (row[n] as number) / (row[i] as number));
}

describe('a straight model with normal errors has a closed posterior', () => {
  const h = [
    [1, 0, 0],
    [1, 0.5, -0.2],
    [1, 0.9, -0.4],
    [1, 1, -0.6],
  ];
  const years = [0, 1, 2, 3.5];
  const sd = [0.15, 0.15, 0.25, 0.15];
  const observed = [0.3, 0.75, 1.4, 0.2];
  const walk = 0.01;
  const dims = 3;
  const n = 4;
  const column = (z: Float64Array, j: number) =>
    Float64Array.from({ length: z.length / dims }, (_, m) => z[m * dims + j] as number);

  it('mean and spread of the sample are those of the formula', () => {
    // cov = H Hᵀ + K + R; mean = Hᵀ cov⁻¹ y; posterior covariance I − Hᵀ cov⁻¹ H (general linear model).
    const cov = h.map((a, i) =>
      h.map(
        (b, k) =>
          a.reduce((sum, value, j) => sum + value * (b[j] as number), 0) +
          walk * Math.min(years[i] as number, years[k] as number) +
          (i === k ? (sd[i] as number) ** 2 : 0),
      ),
    );
    const solved = solve(cov, observed);
    const sampled = sample({
      dims,
      rows: n,
      predict: (z, count) => {
        const y = new Float64Array(count * n);
        for (let m = 0; m < count; m++)
          for (let i = 0; i < n; i++)
            for (let j = 0; j < dims; j++)
              y[m * n + i] = (y[m * n + i] as number) + (h[i]?.[j] as number) * (z[m * dims + j] as number);
        return y;
      },
      readings: { years: Float64Array.from(years), sd: Float64Array.from(sd), law: 'normal', walk },
      observed: Float64Array.from(observed),
      random: createRandom(5),
      members: 20_000,
    });
    expect(sampled.effective).toBeGreaterThan(10_000);
    for (let j = 0; j < dims; j++) {
      const column_j = h.map((row) => row[j] as number);
      const mean = column_j.reduce((sum, value, i) => sum + value * (solved[i] as number), 0);
      const gain = solve(cov, column_j);
      const variance = 1 - column_j.reduce((sum, value, i) => sum + value * (gain[i] as number), 0);
      const got = weightedMoments(column(sampled.z, j), sampled.weights);
      // Four standard errors of a Monte Carlo mean and spread.
      const error = (4 * Math.sqrt(variance)) / Math.sqrt(sampled.effective);
      expect(Math.abs(got.mean - mean)).toBeLessThan(error);
      expect(Math.abs(got.sd - Math.sqrt(variance))).toBeLessThan(error);
    }
  });

  it('the chance of the readings is that of the many-dimensional normal curve', () => {
    const errors = Float64Array.from(observed);
    const cov = years.map((a, i) =>
      years.map((b, k) => walk * Math.min(a, b) + (i === k ? (sd[i] as number) ** 2 : 0)),
    );
    const solved = solve(cov, observed);
    const square = observed.reduce((sum, value, i) => sum + value * (solved[i] as number), 0);
    // Determinant as the product of the pivots of the leading blocks.
    let logDet = 0;
    for (let size = 1; size <= n; size++) {
      const block = cov.slice(0, size).map((row) => row.slice(0, size));
      const unit = Array.from({ length: size }, (_, i) => (i === size - 1 ? 1 : 0));
      logDet -= Math.log(solve(block, unit)[size - 1] as number);
    }
    const state: WalkState = { mean: 0, variance: 0 };
    const readings = { years: Float64Array.from(years), sd: Float64Array.from(sd), law: 'normal', walk } as const;
    expect(follow(readings, errors, state, new Float64Array(n))).toBeCloseTo(-0.5 * (square + logDet), 9);
  });
});

describe("Student's errors over a walk", () => {
  const student = (e: number, s: number) => (1 + (e / s) ** 2 / 4) ** -2.5 / s;
  const normal = (x: number, v: number) => Math.exp((-0.5 * x * x) / v) / Math.sqrt(2 * Math.PI * v);

  it.each([
    { errors: [0, 0.2, 0.1], years: [0, 1, 2], sd: 0.15 },
    { errors: [0.1, 1.2, 0], years: [0, 1, 2], sd: 0.15 },
    { errors: [0, -0.4, 0.5], years: [0, 6, 14], sd: 0.12 },
    { errors: [0.2, 0.3, -0.1], years: [0, 0.2, 0.3], sd: 0.6 },
  ])('agrees with brute summing over the walk: $errors', ({ errors, years, sd }) => {
    const walk = 0.01;
    const v1 = walk * ((years[1] as number) - (years[0] as number));
    const v2 = walk * ((years[2] as number) - (years[1] as number));
    const cells = 400;
    let sum = 0;
    for (let a = 0; a < cells; a++) {
      const w1 = Math.sqrt(v1) * 7 * ((2 * (a + 0.5)) / cells - 1);
      const first = normal(w1, v1) * student((errors[1] as number) - w1, sd) * ((14 * Math.sqrt(v1)) / cells);
      for (let b = 0; b < cells; b++) {
        const step = Math.sqrt(v2) * 7 * ((2 * (b + 0.5)) / cells - 1);
        sum +=
          first * normal(step, v2) * student((errors[2] as number) - w1 - step, sd) * ((14 * Math.sqrt(v2)) / cells);
      }
    }
    const exact = Math.log(sum * student(errors[0] as number, sd));
    const state: WalkState = { mean: 0, variance: 0 };
    const readings = {
      years: Float64Array.from(years),
      sd: new Float64Array(3).fill(sd),
      law: 'student',
      walk,
    } as const;
    const got = follow(readings, Float64Array.from(errors), state, new Float64Array(3));
    // One normal curve stands for the walk after each reading: right to a few per cent of chance.
    expect(Math.abs(got - exact)).toBeLessThan(0.03);
  });
});

describe('one retest of a straight soil', () => {
  it.each(['student', 'normal'] as const)('the sampler finds what the grid finds (%s errors)', (law) => {
    const grid = capacityFromRetest({
      prior: { median: 40, sdLog: 0.5 },
      dose: 60,
      eta: 0.75,
      change: 1,
      sd: 0.28,
      law,
    });
    const sampled = sample({
      dims: 1,
      rows: 1,
      predict: (z, count) =>
        Float64Array.from({ length: count }, (_, m) => 45 / (40 * Math.exp(0.5 * (z[m] as number)))),
      readings: { years: Float64Array.of(0), sd: Float64Array.of(0.28), law, walk: 0.01 },
      observed: Float64Array.of(1),
      random: createRandom(3),
      members: 20_000,
    });
    const logs = sampled.z.map((z) => Math.log(40) + 0.5 * z);
    const { mean, sd } = weightedMoments(logs, sampled.weights);
    expect(Math.abs(mean - grid.meanLog)).toBeLessThan(0.01);
    expect(Math.abs(sd - grid.sdLog)).toBeLessThan(0.01);
  });
});

import type { Random } from '../forecast/random.ts';
import { type Guide, guideTo, straightLines } from './guide.ts';
import { cholesky, forwardSolve, logDiagonal } from './matrix.ts';
import { follow, type Readings, type WalkState } from './walk.ts';
import { effectiveCount } from './weighted.ts';

/** What is to be learned, free of soil: latent values with a standard normal prior, and a model of the readings. */
export interface SampleInput {
  readonly dims: number;
  /** Figures the model gives a member: first one a reading, then any others wanted. */
  readonly rows: number;
  /** Runs the model, `y[member * rows + i]` from `z[member * dims + j]`. */
  predict(z: Float64Array, count: number): Float64Array;
  readonly readings: Readings;
  readonly observed: Float64Array;
  /** First look at the latent values, when the prior is far wider than the readings allow. */
  readonly look?: { readonly mean: Float64Array; readonly sd: Float64Array };
  readonly random: Random;
  /** Members of the first and of each later round. */
  readonly first?: number;
  readonly members?: number;
}

export interface Sample {
  readonly count: number;
  readonly dims: number;
  readonly rows: number;
  readonly z: Float64Array;
  readonly y: Float64Array;
  /** Weights after all readings; they add up to 1. */
  readonly weights: Float64Array;
  /** Logarithm of prior over proposal, by member. */
  readonly base: Float64Array;
  /** Logarithm of the chance of the first i + 1 readings, `[member * readings + i]`. */
  readonly prefix: Float64Array;
  /** The walk of each member after the last reading. */
  readonly walkMean: Float64Array;
  readonly walkVariance: Float64Array;
  /** How many equally weighted members it is worth. */
  readonly effective: number;
}

const FIRST = 96;
const MEMBERS = 288;
/** Worth below which another round is drawn, and the most rounds. */
const ENOUGH = 120;
const MOST_ROUNDS = 4;

interface Proposal {
  readonly mean: Float64Array;
  readonly lower: Float64Array;
  readonly logScale: number;
  readonly count: number;
}

function proposal(mean: Float64Array, covariance: Float64Array, dims: number, count: number): Proposal {
  const lower = cholesky(covariance, dims);
  return { mean, lower, logScale: logDiagonal(lower, dims), count };
}

function draw(from: Proposal, dims: number, random: Random, z: Float64Array): void {
  const u = new Float64Array(dims);
  for (let m = 0; m < from.count; m++) {
    for (let j = 0; j < dims; j++) u[j] = random.normal();
    for (let j = 0; j < dims; j++) {
      let value = from.mean[j] as number;
      for (let k = 0; k <= j; k++) value += (from.lower[j * dims + k] as number) * (u[k] as number);
      z[m * dims + j] = value;
    }
  }
}

/** Logarithm of the density, without the constant that prior and proposals share. */
function logDensity(of: Proposal, dims: number, z: Float64Array, at: number, work: Float64Array): number {
  for (let j = 0; j < dims; j++) work[j] = (z[at + j] as number) - (of.mean[j] as number);
  forwardSolve(of.lower, dims, work);
  let square = 0;
  for (let j = 0; j < dims; j++) square += (work[j] as number) ** 2;
  return -0.5 * square - of.logScale;
}

const join = (a: Float64Array, b: Float64Array): Float64Array => {
  const both = new Float64Array(a.length + b.length);
  both.set(a);
  both.set(b, a.length);
  return both;
};

/**
 * Posterior of the latent values by importance sampling: members are drawn where the answer is likely to lie (see
 * `guide.ts`) and weighted by prior times chance of the readings over the density they were drawn with. The weights are
 * exact, whatever the guide; a poor guide only makes the sample worth less, and then another round is drawn.
 *
 * Deterministic for a given `random`. Source: textbook Monte Carlo (common practice); checked against closed forms.
 */
export function sample(input: SampleInput): Sample {
  const { dims, rows, readings, observed, random } = input;
  const n = observed.length;
  const lookMean = input.look?.mean ?? new Float64Array(dims);
  const look = new Float64Array(dims * dims);
  for (let j = 0; j < dims; j++) look[j * dims + j] = (input.look?.sd[j] ?? 1) ** 2;
  const proposals: Proposal[] = [proposal(lookMean, look, dims, input.first ?? FIRST)];
  let z: Float64Array = new Float64Array((proposals[0] as Proposal).count * dims);
  draw(proposals[0] as Proposal, dims, random, z);
  let count = (proposals[0] as Proposal).count;
  let y = input.predict(z, count);
  let guide: Guide = guideTo(straightLines(z, y, count, dims, n, rows), dims, readings, observed);
  for (let round = 1; ; round++) {
    const next = proposal(guide.mean, guide.covariance, dims, input.members ?? MEMBERS);
    proposals.push(next);
    const more = new Float64Array(next.count * dims);
    draw(next, dims, random, more);
    z = join(z, more);
    y = join(y, input.predict(more, next.count));
    count += next.count;
    const result = weigh(input, proposals, z, y, count);
    if (result.effective >= ENOUGH || round >= MOST_ROUNDS) return result;
    guide = adapt(result, guide);
  }
}

function weigh(
  input: SampleInput,
  proposals: readonly Proposal[],
  z: Float64Array,
  y: Float64Array,
  count: number,
): Sample {
  const { dims, rows, readings, observed } = input;
  const n = observed.length;
  const base = new Float64Array(count);
  const logs = new Float64Array(count);
  const prefix = new Float64Array(count * n);
  const walkMean = new Float64Array(count);
  const walkVariance = new Float64Array(count);
  const errors = new Float64Array(n);
  const work = new Float64Array(dims);
  const state: WalkState = { mean: 0, variance: 0 };
  let highest = Number.NEGATIVE_INFINITY;
  for (let m = 0; m < count; m++) {
    let square = 0;
    for (let j = 0; j < dims; j++) square += (z[m * dims + j] as number) ** 2;
    let density = 0;
    for (const one of proposals) density += (one.count / count) * Math.exp(logDensity(one, dims, z, m * dims, work));
    for (let i = 0; i < n; i++) errors[i] = (observed[i] as number) - (y[m * rows + i] as number);
    base[m] = -0.5 * square - Math.log(density);
    logs[m] = (base[m] as number) + follow(readings, errors, state, prefix, m * n);
    walkMean[m] = state.mean;
    walkVariance[m] = state.variance;
    if ((logs[m] as number) > highest) highest = logs[m] as number;
  }
  const weights = normalised(logs, highest);
  return {
    count,
    dims,
    rows,
    z,
    y,
    weights,
    base,
    prefix,
    walkMean,
    walkVariance,
    effective: effectiveCount(weights),
  };
}

/** Weights that add up to 1 from their logarithms. Members the model could not run have none. */
export function normalised(logs: Float64Array, highest = Math.max(...logs)): Float64Array {
  const weights = Float64Array.from(logs, (log) => (Number.isFinite(log) ? Math.exp(log - highest) : 0));
  let sum = 0;
  for (const weight of weights) sum += weight;
  for (let i = 0; i < weights.length; i++) weights[i] = (weights[i] as number) / sum;
  return weights;
}

/** Mean and spread of the weighted sample, drawn half way to the last guide because few members carry the weight. */
function adapt(sampled: Sample, last: Guide): Guide {
  const { dims, count, z, weights } = sampled;
  const mean = new Float64Array(dims);
  for (let m = 0; m < count; m++)
    for (let j = 0; j < dims; j++) mean[j] = (mean[j] as number) + (weights[m] as number) * (z[m * dims + j] as number);
  const covariance = new Float64Array(dims * dims);
  for (let m = 0; m < count; m++)
    for (let j = 0; j < dims; j++)
      for (let k = 0; k < dims; k++)
        covariance[j * dims + k] =
          (covariance[j * dims + k] as number) +
          (weights[m] as number) *
            ((z[m * dims + j] as number) - (mean[j] as number)) *
            ((z[m * dims + k] as number) - (mean[k] as number));
  const trust = Math.min(0.8, sampled.effective / (4 * dims));
  for (let i = 0; i < covariance.length; i++)
    covariance[i] = trust * 1.3 * (covariance[i] as number) + (1 - trust) * (last.covariance[i] as number);
  for (let j = 0; j < dims; j++) {
    mean[j] = trust * (mean[j] as number) + (1 - trust) * (last.mean[j] as number);
    covariance[j * dims + j] = (covariance[j * dims + j] as number) + 1e-4;
  }
  return { mean, covariance };
}

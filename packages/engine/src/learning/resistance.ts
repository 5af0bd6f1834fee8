import type { LogEstimate } from '../soil/soil.ts';
import { normalised, type Sample } from './sampler.ts';
import type { Learning, Resistance } from './types.ts';
import { ascending, shareOver, weightedMoments, weightedQuantiles } from './weighted.ts';

/** The most that one retest may change what is believed of a soil's resistance (dynamics section 7). */
export const MOST_PER_RETEST = 2;
/** Something was learned when the posterior is narrower than this share of the prior (judgement) ... */
export const TAUGHT = 0.9;
/** ... or has moved by more than this share of the prior's spread: a surprise can teach without making surer. */
const MOVED = 0.5;
const MIDDLE = [0.1, 0.5, 0.9] as const;

/** A column of the sample as the logarithm of its parameter. */
function logsOf({ z, dims, count }: Sample, column: number, prior: LogEstimate): Float64Array {
  const logs = new Float64Array(count);
  const centre = Math.log(prior.median);
  for (let m = 0; m < count; m++) logs[m] = centre + prior.sdLog * (z[m * dims + column] as number);
  return logs;
}

/** Before and after of one parameter with a spread on the scale of its logarithm. */
export function learningOf(sampled: Sample, column: number, prior: LogEstimate): Learning {
  const logs = logsOf(sampled, column, prior);
  const { mean, sd } = weightedMoments(logs, sampled.weights);
  const [low, median, high] = weightedQuantiles(logs, sampled.weights, MIDDLE) as [number, number, number];
  return {
    prior,
    median: Math.exp(median),
    meanLog: mean,
    sdLog: sd,
    low: Math.exp(low),
    high: Math.exp(high),
  };
}

/** Nothing was learned: the posterior is the prior. */
export function unlearned(prior: LogEstimate): Learning {
  const reach = 1.2816 * prior.sdLog;
  return {
    prior,
    median: prior.median,
    meanLog: Math.log(prior.median),
    sdLog: prior.sdLog,
    low: prior.median * Math.exp(-reach),
    high: prior.median * Math.exp(reach),
  };
}

/**
 * The factor each retest would teach on its own turn, each turn held within a factor of 2 of the one before:
 * `f_j = f_(j−1) · clamp(m_j/f_(j−1), 1/2, 2)` with m_j the posterior median of the factor after j readings.
 */
export function cappedFactor(medians: readonly number[]): number {
  let factor = 1;
  for (const median of medians) factor *= Math.min(MOST_PER_RETEST, Math.max(1 / MOST_PER_RETEST, median / factor));
  return factor;
}

/** Posterior median of the factor after the first, the first two, ... readings. */
export function mediansByReading(sampled: Sample, column: number, prior: LogEstimate, readings: number): number[] {
  const logs = logsOf(sampled, column, prior);
  const order = ascending(logs);
  const medians: number[] = [];
  const turn = new Float64Array(sampled.count);
  for (let i = 0; i < readings; i++) {
    for (let m = 0; m < sampled.count; m++)
      turn[m] = (sampled.base[m] as number) + (sampled.prefix[m * readings + i] as number);
    const [median] = weightedQuantiles(logs, normalised(turn), [0.5], order);
    medians.push(Math.exp((median as number) - Math.log(prior.median)));
  }
  return medians;
}

/** What the readings teach of the soil's resistance, no more than a factor 2 a retest. */
export function resistanceOf(sampled: Sample, column: number, prior: LogEstimate, readings: number): Resistance {
  const free = learningOf(sampled, column, prior);
  // The first reading has nothing to be compared with.
  const factor = cappedFactor(mediansByReading(sampled, column, prior, readings).slice(1));
  const asked = free.median / prior.median;
  const capped = readings > 1 && Math.abs(Math.log(factor / asked)) > 1e-3;
  const shift = capped ? Math.log(factor / asked) : 0;
  const move = Math.exp(shift);
  // What the cap holds back stays in the spread, but no learning makes us less sure than before it.
  const sdLog = Math.min(prior.sdLog, Math.hypot(free.sdLog, shift));
  return {
    prior,
    median: free.median * move,
    meanLog: free.meanLog + shift,
    sdLog: capped ? sdLog : free.sdLog,
    low: free.low * move,
    high: free.high * move,
    factor: (free.median * move) / prior.median,
    factorLow: (free.low * move) / prior.median,
    factorHigh: (free.high * move) / prior.median,
    chanceMore: shareOver(logsOf(sampled, column, prior), sampled.weights, Math.log(prior.median)),
    capped,
    freeMedian: free.median,
    freeSdLog: free.sdLog,
    taught: free.sdLog < TAUGHT * prior.sdLog || Math.abs(free.meanLog - Math.log(prior.median)) > MOVED * prior.sdLog,
  };
}

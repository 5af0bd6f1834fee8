import type { Random } from '../forecast/random.ts';
import type { PhEstimate } from '../soil/soil.ts';
import type { BedModel } from './bed-model.ts';
import { type Sample, sample } from './sampler.ts';
import type { Readings } from './walk.ts';

/** Least spread of the first look at the starting pH. */
const LEAST_LOOK = 0.4;

/**
 * Posterior of a bed's unknowns. The pH at the start is nearly unknown before the first reading, so the first look is
 * taken around that reading; the weights account for it.
 *
 * @param rows days the model was built for: the readings first, then any others
 */
export function infer(
  model: BedModel,
  rows: number,
  readings: Readings,
  observed: Float64Array,
  before: PhEstimate,
  random: Random,
): Sample {
  const dims = model.latents.list.length;
  const level = model.latents.list.findIndex(({ name }) => name === 'ph0');
  const look = { mean: new Float64Array(dims), sd: new Float64Array(dims).fill(1) };
  look.mean[level] = ((observed[0] as number) - before.mean) / before.sd;
  look.sd[level] = Math.min(1, Math.max(LEAST_LOOK, 2 * (readings.sd[0] as number)) / before.sd);
  return sample({ dims, rows, predict: model.predict, readings, observed, look, random });
}

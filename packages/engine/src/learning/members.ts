import { PARAMETER_NAMES, type ParameterSet } from '../forecast/parameter-set.ts';
import type { Random } from '../forecast/random.ts';
import { fromLatent, type Latents, membersOf } from './latent.ts';
import type { Sample } from './sampler.ts';
import { resample } from './weighted.ts';

/**
 * Members for a forecast from today on: the sample in proportion to its weights, each with its pH of today. Parameters
 * the record is silent on are drawn from the almanac's spreads, as the forecast would.
 *
 * @param ph pH of each member of the sample today
 * @param factor the capacity is multiplied by this: what the cap of a factor 2 held back
 */
export function forecastMembers(
  sampled: Sample,
  latents: Latents,
  ph: Float64Array,
  factor: number,
  count: number,
  random: Random,
): ParameterSet {
  const { dims } = sampled;
  const picked = resample(sampled.weights, count, random.uniform());
  const z = new Float64Array(count * dims);
  for (let i = 0; i < count; i++)
    for (let j = 0; j < dims; j++) z[i * dims + j] = sampled.z[(picked[i] as number) * dims + j] as number;
  const set = membersOf(latents, z, count);
  const spoken = new Set(latents.list.map(({ name }) => name));
  for (const name of PARAMETER_NAMES) {
    if (spoken.has(name)) continue;
    const spread = latents.all[name];
    for (let i = 0; i < count; i++) set[name][i] = fromLatent(spread, random.normal());
  }
  for (let i = 0; i < count; i++) {
    set.ph0[i] = ph[picked[i] as number] as number;
    set.beta0[i] = (set.beta0[i] as number) * factor;
  }
  return set;
}

import {
  emptySet,
  PARAMETER_NAMES,
  type ParameterName,
  type ParameterSet,
  spreads,
} from '../forecast/parameter-set.ts';
import { P, type Spread } from '../forecast/parameters.ts';
import type { ForecastInput } from '../forecast/types.ts';

/** One unknown of the forecast as a latent value z with a standard normal prior: `centre·exp(sd z)` or `centre + sd z`. */
export interface Latent {
  readonly name: ParameterName;
  readonly spread: Spread;
}

export interface Latents {
  /** Unknowns that the record can speak of. */
  readonly list: readonly Latent[];
  /** The spread of every parameter, those the record is silent on too. */
  readonly all: Readonly<Record<ParameterName, Spread>>;
}

/** Which unknowns the record can speak of at all. */
function active(input: ForecastInput): ParameterName[] {
  const laws = new Set(input.applications.map(({ reaction }) => reaction.law));
  const acid = input.applications.some(({ currency }) => currency < 0);
  const base = input.applications.some(({ currency }) => currency > 0);
  const names: ParameterName[] = ['ph0', 'beta0', 'a0', 'pm', 'w', 'pHCal', 'drainage', 'pCO2'];
  if (laws.has('dissolving')) names.push('kLime');
  if (laws.has('oxidising')) names.push('kSulfur', 'lag');
  if (acid && base) names.push('etaAcid');
  if (input.yearly?.nitrogen !== undefined) names.push('leached');
  if (input.applications.some(({ incorporation }) => incorporation < 0.8 * input.layer.depth)) names.push('exchange');
  return names;
}

/**
 * Unknowns of a bed. Dose and pH alone cannot tell the soil's buffer capacity from the share of the dose that acts, so
 * only their ratio is kept: the share stands at its usual figure and its spread is added to that of the capacity.
 *
 * Source: dynamics section 7.
 */
export function latentsOf(input: ForecastInput): Latents {
  const usual = spreads(input);
  const acid = input.applications.some(({ currency }) => currency < 0);
  const base = input.applications.some(({ currency }) => currency > 0);
  const lime = input.container ? P.etaMixed.sd : P.etaField.sd;
  const share = base ? lime : acid ? usual.etaAcid.sd : 0;
  const all: Record<ParameterName, Spread> = {
    ...usual,
    beta0: { ...usual.beta0, sd: Math.hypot(usual.beta0.sd, share) },
    eta: { ...usual.eta, kind: 'none', sd: 0 },
    etaAcid: acid && base ? usual.etaAcid : { ...usual.etaAcid, kind: 'none', sd: 0 },
  };
  return { list: active(input).map((name) => ({ name, spread: all[name] })), all };
}

/** The parameter at a latent value, kept within its limits. */
export function fromLatent({ kind, centre, sd, low, high }: Spread, z: number): number {
  const value = kind === 'log' ? centre * Math.exp(sd * z) : kind === 'normal' ? centre + sd * z : centre;
  return Math.min(high, Math.max(low, value));
}

/** Members of the forecast from their latent values; unknowns the record is silent on stand at their centres. */
export function membersOf(latents: Latents, z: Float64Array, count: number): ParameterSet {
  const set = emptySet(count);
  for (const name of PARAMETER_NAMES) set[name].fill(latents.all[name].centre);
  const dims = latents.list.length;
  for (const [j, { name, spread }] of latents.list.entries()) {
    const column = set[name];
    for (let m = 0; m < count; m++) column[m] = fromLatent(spread, z[m * dims + j] as number);
  }
  return set;
}

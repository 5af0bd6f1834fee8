import { P, type Spread } from './parameters.ts';
import { createRandom, type Random } from './random.ts';
import type { ForecastInput } from './types.ts';

/** What differs from member to member; one array a parameter, SI, in the symbols of `docs/model.md`. */
export interface ParameterSet {
  readonly count: number;
  /** pH at the start. */
  readonly ph0: Float64Array;
  /** kg CaCO3/kg/pH. */
  readonly beta0: Float64Array;
  readonly pm: Float64Array;
  readonly w: Float64Array;
  readonly pHCal: Float64Array;
  /** Diameter loss of calcite, m/day. */
  readonly kLime: Float64Array;
  readonly eta: Float64Array;
  readonly etaAcid: Float64Array;
  /** kg CaCO3/m²/yr. */
  readonly a0: Float64Array;
  /** Factor on the scenario's drainage. */
  readonly drainage: Float64Array;
  readonly pCO2: Float64Array;
  readonly leached: Float64Array;
  /** kg/m²/day. */
  readonly kSulfur: Float64Array;
  /** Days at 25 °C. */
  readonly lag: Float64Array;
  /** Factor on the soil swapped between layers. */
  readonly exchange: Float64Array;
}

export const PARAMETER_NAMES = [
  'ph0',
  'beta0',
  'pm',
  'w',
  'pHCal',
  'kLime',
  'eta',
  'etaAcid',
  'a0',
  'drainage',
  'pCO2',
  'leached',
  'kSulfur',
  'lag',
  'exchange',
] as const satisfies readonly (keyof ParameterSet)[];
export type ParameterName = (typeof PARAMETER_NAMES)[number];

const clip = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value));

/** Spread of each parameter for a place: the almanac's, but for what the place's own evidence sets. */
export function spreads(
  input: Pick<ForecastInput, 'curve' | 'present' | 'medium' | 'container' | 'known'>,
): Readonly<Record<ParameterName, Spread>> {
  const { curve, present } = input;
  const free = { low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY };
  const factor = (sd: number): Spread => ({ kind: 'log', centre: 1, sd, ...free });
  const all: Record<ParameterName, Spread> = {
    ph0: { kind: 'normal', centre: present.mean, sd: present.sd, low: 2, high: 11 },
    beta0: { kind: 'log', centre: curve.beta0, sd: curve.sdLog, ...free },
    pm: { ...P.pm, centre: curve.pm, low: curve.pm - 0.5, high: curve.pm + 0.5 },
    w: { ...P.w, centre: curve.w },
    pHCal: { ...P.pHCal, centre: curve.plateau },
    kLime: input.medium === 'soilless' ? { ...P.kMedia, ...free } : { ...P.kSoil, ...free },
    eta: input.container ? P.etaMixed : P.etaField,
    etaAcid: input.container ? P.etaMixed : P.etaAcid,
    a0: P.a0,
    drainage: factor(P.drainage.sd),
    pCO2: { ...P.pCO2, low: 0.0004, high: 0.1 },
    leached: { ...P.leached, low: 0, high: 1 },
    kSulfur: { ...P.kSulfur, ...free },
    lag: { ...P.lag, high: 60 },
    exchange: factor(P.exchange.sd),
  };
  for (const name of PARAMETER_NAMES) {
    const known = input.known?.[name];
    if (known !== undefined) all[name] = { ...all[name], centre: known.centre, sd: known.sd ?? all[name].sd };
  }
  return all;
}

/** A view of members `from` to before `to`. */
export function part(set: ParameterSet, from: number, to: number): ParameterSet {
  const columns = Object.fromEntries(PARAMETER_NAMES.map((name) => [name, set[name].subarray(from, to)]));
  return { count: to - from, ...columns } as ParameterSet;
}

/** `count` members of a larger set, evenly from all of it; the set itself when it is no larger. */
export function thinned(set: ParameterSet, count: number): ParameterSet {
  if (set.count <= count) return set;
  const few = emptySet(count);
  for (const name of PARAMETER_NAMES)
    for (let m = 0; m < count; m++) few[name][m] = set[name][Math.floor(((m + 0.5) * set.count) / count)] ?? Number.NaN;
  return few;
}

/** Room for `count` members. */
export function emptySet(count: number): ParameterSet {
  const columns = Object.fromEntries(PARAMETER_NAMES.map((name) => [name, new Float64Array(count)]));
  return { count, ...columns } as ParameterSet;
}

/** One member with every parameter at its centre: the run the account is made of. */
export function centralSet(input: Parameters<typeof spreads>[0]): ParameterSet {
  const set = emptySet(1);
  const all = spreads(input);
  for (const name of PARAMETER_NAMES) set[name][0] = all[name].centre;
  return set;
}

/** Medians of a set, as one member. */
export function medianSet(set: ParameterSet): ParameterSet {
  const one = emptySet(1);
  for (const name of PARAMETER_NAMES) {
    const sorted = Float64Array.from(set[name]).sort();
    one[name][0] = sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
  }
  return one;
}

/** Draws an ensemble from the spreads of a place; the same seed gives the same members. */
export function drawParameters(
  input: Parameters<typeof spreads>[0],
  count: number,
  random: Random = createRandom(1),
): ParameterSet {
  const set = emptySet(count);
  const all = spreads(input);
  for (const name of PARAMETER_NAMES) {
    const { kind, centre, sd, low, high } = all[name];
    const column = set[name];
    if (kind === 'none' || sd === 0) column.fill(centre);
    else {
      random.normals(column);
      if (kind === 'normal')
        for (let m = 0; m < count; m++) column[m] = clip(centre + sd * (column[m] as number), low, high);
      else for (let m = 0; m < count; m++) column[m] = clip(centre * Math.exp(sd * (column[m] as number)), low, high);
    }
  }
  return set;
}

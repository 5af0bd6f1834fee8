import { grade } from '@sorrel/almanac/assumed-sieves';
import { climates } from '@sorrel/almanac/climates';
import {
  type ForecastApplication,
  type ForecastInput,
  P,
  type ParameterName,
  type Reaction,
} from '../packages/engine/src/forecast/index.ts';
import type { Sieve } from '../packages/engine/src/materials/material.ts';

/** kg CaCO3 per mmol of charge. */
export const MMOL = 0.05004 / 1000;
/** t/ha of lime as kg/m². */
export const TONNE_HA = 0.1;
/** kmol/ha/yr of acid as kg CaCO3/m²/yr. */
export const KMOL_HA = 0.1 * 0.05004;
/** Water pH of a CaCl2 reading: 1.05 pHw − 0.9 (CONDAV). */
export const fromCalciumChloride = (ph: number): number => (ph + 0.9) / 1.05;
export const toCalciumChloride = (ph: number): number => 1.05 * ph - 0.9;

/** What a publication tells of a trial; all else is the model's default, the same for every trial. */
export interface Trial {
  readonly ph: number;
  /** mmol/kg/pH; the model's 42 when the text gives none. */
  readonly beta?: number;
  readonly depth?: number;
  /** kg of soil per hectare of the layer; else 1.3 g/cm³. */
  readonly massPerHa?: number;
  /** kmol H+/ha/yr; the model's 0.7 when the text gives none. */
  readonly own?: number;
  /** mm a year; else from the climate. */
  readonly drainage?: number;
  readonly climate?: string;
  /** Rain of a year in mm: the climate's months, scaled. */
  readonly rain?: number;
  /** Indoors: steady temperature, moist. */
  readonly temperature?: number;
  /** Mixed through by hand in a pot or jar; so is every trial at a steady temperature unless it says otherwise. */
  readonly pot?: boolean;
  /** CaCO3 in the soil, mass fraction. */
  readonly carbonate?: number;
  readonly soilless?: boolean;
  readonly applications?: readonly ForecastApplication[];
  /** Error of the starting pH; 0.1 for the mean of a trial's plots. */
  readonly phSd?: number;
  /** kg N/ha/yr and charge. */
  readonly nitrogen?: { readonly perHa: number; readonly charge: number };
  readonly seed?: number;
}

export const START = '2020-03-01';

/** Lime as a trial applies it; ordinary ground limestone when the text gives no screens. */
export function lime(
  kgPerM2: number,
  depth: number,
  sieves: readonly Sieve[] = grade('ordinary limestone'),
  date = START,
): ForecastApplication {
  return { date, currency: kgPerM2, reaction: { law: 'dissolving', sieves, speed: 1 }, incorporation: depth };
}

/** Sulfur, kg S per m². */
export function sulfur(
  kgPerM2: number,
  depth: number,
  sieves: readonly Sieve[],
  waits = true,
  date = START,
): ForecastApplication {
  const reaction: Reaction = { law: 'oxidising', sieves, speed: 1, waits };
  return { date, currency: -3.1212 * kgPerM2, reaction, incorporation: depth };
}

/** Sieve curve of one size class, mass spread evenly in log d between its limits (m). */
export function oneClass(from: number, to: number): Sieve[] {
  return [
    { opening: to, passing: 1 },
    { opening: from, passing: 0 },
  ];
}

/** The forecast's input for a trial. */
export function inputOf(trial: Trial): ForecastInput {
  const depth = trial.depth ?? 0.15;
  const mass = trial.massPerHa === undefined ? depth * 1300 : trial.massPerHa / 1e4;
  const climate = climates.find(({ name }) => name === (trial.climate ?? 'maritime'));
  const rainOfYear = climate?.rain.reduce((sum, month) => sum + month, 0) ?? 1;
  const known: Partial<Record<ParameterName, { centre: number; sd?: number }>> = {};
  if (trial.own !== undefined) known.a0 = { centre: trial.own * KMOL_HA };
  const steady =
    trial.temperature !== undefined
      ? { temperature: trial.temperature, moisture: P.fw, drainage: (trial.drainage ?? 0) / 1000 }
      : trial.drainage !== undefined
        ? { moisture: P.fw, drainage: trial.drainage / 1000 }
        : undefined;
  return {
    start: START,
    layer: { depth, bulkDensity: mass / depth, coarseFragments: 0, mass },
    curve: {
      beta0: trial.beta === undefined ? P.beta0.centre : trial.beta * MMOL,
      sdLog: P.beta0.sd,
      pm: P.pm.centre,
      w: P.w.centre,
      carbonate: trial.carbonate ?? 0,
      plateau: P.pHCal.centre,
    },
    present: { mean: trial.ph, sd: trial.phSd ?? 0.1 },
    medium: trial.soilless ? 'soilless' : 'mineral',
    container: trial.pot ?? trial.temperature !== undefined,
    weather: {
      climate: trial.climate ?? 'maritime',
      ...(steady === undefined ? {} : { steady }),
      ...(trial.rain === undefined || climate === undefined
        ? {}
        : { rain: climate.rain.map((month) => (month / rainOfYear) * (trial.rain as number) * 1e-3) }),
    },
    applications: trial.applications ?? [],
    ...(trial.nitrogen === undefined
      ? {}
      : { yearly: { nitrogen: { amount: trial.nitrogen.perHa / 1e4, charge: trial.nitrogen.charge } } }),
    known,
    seed: trial.seed ?? 1,
  };
}

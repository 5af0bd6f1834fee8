import {
  createRandom,
  drawParameters,
  P,
  type ParameterSet,
  run,
  scenario,
} from '../packages/engine/src/forecast/index.ts';
import type { Observation, Series } from './series-cases.ts';
import { inputOf, type Trial } from './trials.ts';

const MEMBERS = 2000;
const YEAR = 365.2425;
/** A soil forgets a push: leaching grows with pH. Beyond the five years of a forecast the model's noise grows no more. */
const MEMORY_YEARS = 5;

export interface Row {
  readonly series: Series;
  readonly observation: Observation;
  readonly median: number;
  readonly low: number;
  readonly high: number;
  readonly held: boolean;
}

const quantile = (sorted: Float64Array, share: number): number => {
  const place = share * (sorted.length - 1);
  const low = sorted[Math.floor(place)] ?? Number.NaN;
  return low + (place - Math.floor(place)) * ((sorted[Math.ceil(place)] ?? low) - low);
};

/** pH of every member at a time, for the bed or one layer. Long trials take steps of four weeks. */
function readings(series: Series, trial: Trial, set: ParameterSet, observation: Observation) {
  const input = inputOf(trial);
  const stepDays = observation.years > 15 ? 28 : 7;
  const steps = Math.ceil((observation.years * YEAR) / stepDays) + 1;
  const shared = scenario(input, { stepDays, steps, ...(series.below ? { below: series.below } : {}) });
  const at = (years: number) => Math.min(steps, Math.round((years * YEAR) / stepDays));
  const members = observation.layer === undefined ? undefined : new Float64Array(set.count * (steps + 1));
  const ph = new Float64Array((steps + 1) * set.count);
  if (members === undefined) run(shared, set, { ph });
  else
    for (let m = 0; m < set.count; m++) {
      const one = member(set, m);
      const layerPh = new Float64Array((steps + 1) * shared.layers);
      run(shared, one, { ph: new Float64Array(steps + 1), layerPh });
      for (let t = 0; t <= steps; t++)
        ph[t * set.count + m] =
          layerPh[t * shared.layers + Math.min(shared.layers - 1, observation.layer ?? 0)] ?? Number.NaN;
    }
  return (years: number, m: number) => ph[at(years) * set.count + m] ?? Number.NaN;
}

const member = (set: ParameterSet, m: number): ParameterSet =>
  Object.fromEntries(
    Object.entries(set).map(([name, column]) => [
      name,
      name === 'count' ? 1 : (column as Float64Array).slice(m, m + 1),
    ]),
  ) as unknown as ParameterSet;

/** Forecasts one series; the band holds the model's own noise and the error of the observation. */
export function forecastSeries(series: Series): Row[] {
  return series.observations.map((observation) => {
    const random = createRandom(series.trial.seed ?? 1);
    const input = inputOf(series.trial);
    const set = drawParameters(input, observation.layer === undefined ? MEMBERS : MEMBERS / 4, random);
    const treated = readings(series, series.trial, set, observation);
    const untreated =
      observation.against === 'untreated'
        ? readings(
            { ...series },
            { ...series.trial, applications: series.trial.applications?.map((a) => ({ ...a, currency: 0 })) ?? [] },
            set,
            observation,
          )
        : undefined;
    const { years, since, perYear } = observation;
    const method = observation.method ?? ((ph: number) => ph);
    const values = new Float64Array(set.count);
    for (let m = 0; m < set.count; m++) {
      const walk =
        P.process * Math.sqrt(untreated ? 0 : Math.min(MEMORY_YEARS, years - (since ?? 0))) * random.normal();
      let value = method(treated(years, m) + walk);
      if (untreated) value -= method(untreated(years, m));
      else if (since !== undefined) value -= method(treated(since, m));
      if (perYear) value /= years - (since ?? 0);
      values[m] = value + (observation.sd ?? P.testLab) * random.normal();
    }
    values.sort();
    const [low, median, high] = [quantile(values, 0.1), quantile(values, 0.5), quantile(values, 0.9)];
    return {
      series,
      observation,
      median,
      low,
      high,
      held: observation.observed >= low && observation.observed <= high,
    };
  });
}

const two = (value: number): string => value.toFixed(Math.abs(value) < 0.1 && value !== 0 ? 3 : 2);

interface Score {
  readonly count: number;
  readonly mae: number;
  readonly bias: number;
  readonly held: number;
}

function score(rows: readonly Row[]): Score {
  const errors = rows.map(({ median, observation }) => median - observation.observed);
  const mean = (list: readonly number[]) => list.reduce((sum, value) => sum + value, 0) / Math.max(1, list.length);
  return {
    count: rows.length,
    mae: mean(errors.map(Math.abs)),
    bias: mean(errors),
    held: mean(rows.map(({ held }) => (held ? 1 : 0))),
  };
}

const line = (name: string, { count, mae, bias, held }: Score): string =>
  `${name}: ${count} observations, mean absolute error ${two(mae)}, bias ${bias >= 0 ? '+' : ''}${two(bias)}, 80 % band holds ${Math.round(100 * held)} %`;

const scores = (results: readonly (readonly Row[])[]): string[] => {
  const rows = results.flat();
  return [
    line('Forecast from inputs alone', score(rows.filter(({ series }) => series.standing === 'forecast'))),
    line(
      'Inputs the reference fitted to the same figure (no test)',
      score(rows.filter(({ series }) => series.standing === 'fitted')),
    ),
  ];
};

/** Plain table for the terminal. */
export function summary(results: readonly (readonly Row[])[]): string {
  const rows = results
    .flat()
    .map(
      ({ series, observation, median, low, high, held }) =>
        `${observation.id.padEnd(5)} ${(held ? 'held' : 'MISS').padEnd(5)} observed ${two(observation.observed).padStart(6)}  median ${two(median).padStart(6)}  80 % ${two(low)} to ${two(high)}  ${series.name}: ${observation.what}`,
    );
  return [...rows, '', ...scores(results)].join('\n');
}

/** The page of the documentation. */
export function page(results: readonly (readonly Row[])[]): string {
  const rows = results.flat();
  const misses = rows.filter(({ held }) => !held);
  return [
    '# The forecast against publications',
    '',
    'Written by `npm run check:series`; do not edit. Each published series is forecast from its inputs alone with the model of',
    '[model.md](model.md), its default parameters and spreads, 2,000 members (500 where a single layer is read). The band holds what is not known of the soil,',
    "the material and the drift, the model's own noise, and the error of the observation. Nothing is tuned to a single case.",
    '',
    '*fitted* marks cases in which the reference set an input (own acid, carbonate, buffer) to meet the very figure beside it.',
    '*in words* marks a publication that says only "raised" or "none found": the figure put to it is ours.',
    'They show that the equations can carry the data, not that a forecast would have been right. Most papers were read as abstracts:',
    'what had to be assumed stands in the last column.',
    '',
    ...scores(results).map((text) => `- ${text}`),
    '',
    '| case | series | what | observed | median | 80 % band | held | standing | source | assumed |',
    '| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |',
    ...rows.map(
      ({ series, observation, median, low, high, held }) =>
        `| ${observation.id} | ${series.name} | ${observation.what} | ${two(observation.observed)} | ${two(median)} | ${two(low)} to ${two(high)} | ${held ? 'yes' : '**no**'} | ${series.standing} | ${series.source} | ${series.assumed} |`,
    ),
    '',
    '## Misses',
    '',
    ...(misses.length === 0 ? ['None.'] : []),
    ...misses.map(
      ({ series, observation, median }) =>
        `- **${observation.id}, ${series.name}** (${observation.what}): observed ${two(observation.observed)}, forecast ${two(median)}. ${series.reason ?? 'No physical reason found yet.'}`,
    ),
    '',
  ].join('\n');
}

import { grade } from '@sorrel/almanac/assumed-sieves';
import { chiSquaredDistributionTable } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { createRandom, type Random } from '../forecast/random.ts';
import type { ForecastApplication } from '../forecast/types.ts';
import { addDays } from '../units/calendar.ts';
import { bedModel } from './bed-model.ts';
import { infer } from './infer.ts';
import { BEFORE } from './learn.ts';
import { presentOf } from './present.ts';
import type { BedRecord } from './types.ts';
import type { Readings } from './walk.ts';

/**
 * Simulation-based calibration: draw a bed's truth from the prior, let the forecast's model and the errors make its
 * record, learn from the record, and see where the truth lies in the posterior. If the learning is right the truth falls
 * into every tenth of the posterior equally often. (Talts and others 2018, from memory.)
 */
const BINS = 10;
/** 1 % point for 9 degrees of freedom, from a general statistics library. */
const LIMIT = chiSquaredDistributionTable[9]?.['0.01'] as number;

const uniform = (random: Random, low: number, high: number) => low + (high - low) * random.uniform();

/** Student's t with 4 degrees: normal over the root of a chi-square of 4 by its degrees. */
function student(random: Random): number {
  let chi = 0;
  for (let i = 0; i < 4; i++) chi += random.normal() ** 2;
  return random.normal() / Math.sqrt(chi / 4);
}

function design(random: Random): { readonly record: BedRecord; readonly days: readonly string[] } {
  const start = '2015-04-01';
  const count = 2 + Math.floor(3 * random.uniform());
  const days = Array.from({ length: count }, (_, i) =>
    addDays(start, i === 0 ? 0 : Math.round(365 * (i + 0.4 * random.uniform()))),
  );
  const kind = random.uniform();
  const applications: ForecastApplication[] = [];
  if (kind < 0.7)
    applications.push({
      date: addDays(start, 10),
      currency: uniform(random, 0.2, 0.9),
      reaction: { law: 'dissolving', sieves: grade('ordinary limestone'), speed: 1 },
      incorporation: 0.15,
    });
  else if (kind < 0.9)
    applications.push({
      date: addDays(start, 20),
      currency: -uniform(random, 0.2, 0.7),
      reaction: { law: 'oxidising', sieves: grade('sulfur dust'), speed: 1, waits: true },
      incorporation: 0.15,
    });
  const record: BedRecord = {
    tests: [],
    applications,
    layer: { depth: 0.15, bulkDensity: 1200, coarseFragments: 0, mass: 180 },
    curve: { beta0: 0.0021, sdLog: 0.45, pm: 5.6, w: 1.6, carbonate: 0, plateau: 7.9 },
    medium: 'mineral',
    weather: { steady: { moisture: 0.9, drainage: 0.3, temperature: 12 } },
  };
  return { record, days };
}

function ranks(gardens: number, seed: number, honesty: number): Readonly<Record<string, number[]>> {
  const random = createRandom(seed);
  const found: Record<string, number[]> = { resistance: [], rate: [], drift: [], start: [], present: [] };
  for (let garden = 0; garden < gardens; garden++) {
    const { record, days } = design(random);
    const today = addDays(days.at(-1) as string, 200);
    const model = bedModel(record, days[0] as string, [...days, today], BEFORE);
    const names = model.latents.list.map(({ name }) => name);
    const truth = Float64Array.from(names, () => random.normal());
    const path = model.predict(truth, 1);
    const years = Float64Array.from(
      days,
      (day) => (Date.parse(day) - Date.parse(days[0] as string)) / 86_400_000 / 365.25,
    );
    const sd = Float64Array.from(days, () => (random.uniform() < 0.8 ? 0.15 : 0.25));
    let walk = 0;
    const observed = Float64Array.from(days, (_, i) => {
      if (i > 0) walk += 0.1 * Math.sqrt((years[i] as number) - (years[i - 1] as number)) * random.normal();
      return (path[i] as number) + walk + (sd[i] as number) * student(random);
    });
    const since = 200 / 365.25;
    const present = (path[days.length] as number) + walk + 0.1 * Math.sqrt(since) * random.normal();
    const readings: Readings = { years, sd: sd.map((one) => one * honesty), law: 'student', walk: 0.01 };
    const sampled = infer(model, days.length + 1, readings, observed, BEFORE, random);
    const below = (values: Float64Array, limit: number) =>
      values.reduce((sum, value, m) => sum + (value <= limit ? (sampled.weights[m] as number) : 0), 0);
    const rank = (name: string, to: string) => {
      const j = names.indexOf(name as (typeof names)[number]);
      if (j < 0) return;
      const column = Float64Array.from({ length: sampled.count }, (_, m) => sampled.z[m * sampled.dims + j] as number);
      found[to]?.push(below(column, truth[j] as number));
    };
    rank('beta0', 'resistance');
    rank('kLime', 'rate');
    rank('a0', 'drift');
    rank('ph0', 'start');
    const { draws } = presentOf({
      sampled,
      readings,
      observed,
      columns: days.map((_, i) => i),
      today: days.length,
      since,
      date: today,
      random,
    });
    found.present?.push(below(draws, present));
  }
  return found;
}

function chiSquare(shares: readonly number[]): number {
  const bins = new Array<number>(BINS).fill(0);
  for (const share of shares) {
    const bin = Math.min(BINS - 1, Math.floor(share * BINS));
    bins[bin] = (bins[bin] as number) + 1;
  }
  const expected = shares.length / BINS;
  return bins.reduce((sum, count) => sum + (count - expected) ** 2 / expected, 0);
}

describe('calibration of the learning', () => {
  it('truth drawn from the prior falls evenly over the posterior', { timeout: 120_000 }, () => {
    for (const [name, shares] of Object.entries(ranks(400, 11, 1))) {
      expect(shares.length, name).toBeGreaterThan(200);
      expect(chiSquare(shares), name).toBeLessThan(LIMIT);
    }
  });

  it('the check would notice a learner that trusts the tests too much', { timeout: 120_000 }, () => {
    const { start, present } = ranks(200, 12, 0.4);
    expect(chiSquare(start ?? [])).toBeGreaterThan(LIMIT);
    expect(chiSquare(present ?? [])).toBeGreaterThan(LIMIT);
  });
});

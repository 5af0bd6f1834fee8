import { grade } from '@sorrel/almanac/assumed-sieves';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createRecorder, gaps } from '../derivation/derivation.ts';
import { account } from './account.ts';
import { forecast } from './forecast.ts';
import { simulate } from './model.ts';
import { centralSet } from './parameter-set.ts';
import type { ForecastApplication, ForecastInput } from './types.ts';

const lime = (currency: number, incorporation = 0.15, date = '2026-03-15'): ForecastApplication => ({
  date,
  currency,
  reaction: { law: 'dissolving', sieves: grade('ordinary limestone'), speed: 1 },
  incorporation,
});
const sulfur = (currency: number, incorporation = 0.15): ForecastApplication => ({
  date: '2026-04-01',
  currency: -currency,
  reaction: { law: 'oxidising', sieves: grade('sulfur dust'), speed: 1, waits: true },
  incorporation,
});
const fast = (currency: number, days: number, incorporation = 0.15): ForecastApplication => ({
  date: '2026-05-01',
  currency,
  reaction: { law: 'fast', days },
  incorporation,
});
const bed = (over: Partial<ForecastInput> = {}): ForecastInput => ({
  start: '2026-03-01',
  years: 3,
  layer: { depth: 0.15, bulkDensity: 1200, coarseFragments: 0, mass: 180 },
  curve: { beta0: 0.0021, sdLog: 0.3, pm: 5.6, w: 1.6, carbonate: 0, plateau: 7.9 },
  present: { mean: 5.4, sd: 0.15 },
  medium: 'mineral',
  weather: { climate: 'maritime', irrigation: 0.1 },
  applications: [],
  range: { low: 6, high: 7 },
  members: 400,
  ...over,
});

const anyApplication = fc.oneof(
  fc
    .record({ amount: fc.double({ min: 0, max: 3, noNaN: true }), depth: fc.constantFrom(0, 0.05, 0.15, 0.25) })
    .map(({ amount, depth }) => lime(amount, depth)),
  fc
    .record({ amount: fc.double({ min: 0, max: 2, noNaN: true }), depth: fc.constantFrom(0, 0.15) })
    .map(({ amount, depth }) => sulfur(amount, depth)),
  fc
    .record({ amount: fc.double({ min: -1, max: 1, noNaN: true }), days: fc.constantFrom(1.5, 14, 120) })
    .map(({ amount, days }) => fast(amount, days)),
);
const anyBed = fc
  .record({
    ph: fc.double({ min: 3.8, max: 8.2, noNaN: true }),
    beta: fc.double({ min: 0.0008, max: 0.005, noNaN: true }),
    carbonate: fc.constantFrom(0, 0, 0.001, 0.02),
    applications: fc.array(anyApplication, { maxLength: 3 }),
    nitrogen: fc.double({ min: 0, max: 0.03, noNaN: true }),
    alkalinity: fc.double({ min: 0, max: 6, noNaN: true }),
  })
  .map(({ ph, beta, carbonate, applications, nitrogen, alkalinity }) =>
    bed({
      present: { mean: ph, sd: 0.15 },
      curve: { beta0: beta, sdLog: 0.3, pm: 5.6, w: 1.6, carbonate, plateau: 7.9 },
      applications,
      yearly: {
        nitrogen: { amount: nitrogen, charge: 1 },
        waterAlkalinity: alkalinity,
        crop: 0.005,
        compost: 0.01,
        carbonStored: 0.05,
      },
    }),
  );

describe('laws of the forecast', () => {
  it('closes the account to 1e-9, with or without layers below', () => {
    fc.assert(
      fc.property(anyBed, fc.boolean(), (input, deeper) => {
        const run = simulate(input, centralSet(input), deeper ? { below: [{ depth: 0.1, offset: -0.3 }] } : {});
        const book = account(input, run);
        const change = book.years.reduce((sum, year) => sum + year.change, 0);
        expect(Math.abs(book.content.end - book.content.start - change)).toBeLessThan(1e-9);
      }),
      { numRuns: 60 },
    );
  });

  it('no lime and no sulfur comes back, and none is lost beyond what was put on', () => {
    fc.assert(
      fc.property(anyBed, (input) => {
        const { left, scenario } = simulate(input, centralSet(input));
        const { count } = scenario.charges;
        for (let i = 0; i < left.length; i++) {
          expect(left[i]).toBeGreaterThanOrEqual(0);
          expect(left[i]).toBeLessThanOrEqual(1);
          if (i >= count) expect(left[i]).toBeLessThanOrEqual((left[i - count] as number) + 1e-12);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('keeps pH between 2 and 14 whatever is put on', () => {
    fc.assert(
      fc.property(anyBed, (input) => {
        for (const ph of simulate(input, centralSet(input)).ph) {
          expect(ph).toBeGreaterThan(1.9);
          expect(ph).toBeLessThan(14);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('halved time step changes the median by less than 0.01 pH', () => {
    for (const applications of [[lime(0.5)], [lime(0.4, 0)], [sulfur(0.3)], [fast(0.4, 14)], [fast(0.2, 1.5)], []])
      for (const ph of [4.6, 5.5, 6.8]) {
        const input = bed({ applications, present: { mean: ph, sd: 0.1 } });
        const set = centralSet(input);
        const whole = simulate(input, set, { stepDays: 7, steps: 156 }).ph;
        const half = simulate(input, set, { stepDays: 3.5, steps: 312 }).ph;
        for (let week = 12; week <= 156; week += 12)
          expect(Math.abs((whole[week] as number) - (half[2 * week] as number))).toBeLessThan(0.01);
      }
  });

  it('nothing applied means drift only: slow, one way, without water or feed downhill', () => {
    const input = bed({ weather: { climate: 'maritime' } });
    const run = simulate(input, centralSet(input));
    for (let t = 1; t < run.ph.length; t++) expect(run.ph[t] as number).toBeLessThanOrEqual(run.ph[t - 1] as number);
    expect((run.ph[0] as number) - (run.ph.at(-1) as number)).toBeLessThan(0.15);
    const { years } = account(input, run);
    for (const { entries } of years) {
      expect(entries.lime).toBe(0);
      expect(entries.sulfur).toBe(0);
      expect(Math.abs(entries.fertilizer)).toBe(0);
      expect(entries['rain and soil']).toBeLessThan(0);
    }
  });

  it('more lime never gives a lower pH', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 4, max: 7, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.constantFrom(0, 0.15),
        (ph, some, more, depth) => {
          const end = (dose: number) => {
            const input = bed({ present: { mean: ph, sd: 0.1 }, applications: [lime(dose, depth)] });
            return simulate(input, centralSet(input)).ph;
          };
          const a = end(some);
          const b = end(some + more);
          for (let t = 0; t < a.length; t += 13) expect(b[t] as number).toBeGreaterThanOrEqual((a[t] as number) - 1e-3);
        },
      ),
      { numRuns: 30 },
    );
  });

  it('a calcareous bed stays on its plateau while carbonate lasts (dynamics 2: 6.2 t S/ha spend 1 % in 15 cm)', () => {
    const input = bed({
      present: { mean: 7.8, sd: 0.1 },
      curve: { beta0: 0.0021, sdLog: 0.3, pm: 5.6, w: 1.6, carbonate: 0.02, plateau: 7.9 },
      applications: [sulfur(0.3)],
    });
    const { ph } = simulate(input, centralSet(input));
    expect(Math.min(...ph)).toBeGreaterThan(7.4);
  });

  it('takes up where an earlier application stands', () => {
    const whole = bed({
      start: '2025-03-01',
      applications: [lime(0.5, 0.15, '2025-03-01')],
      weather: { climate: 'maritime' },
    });
    const first = simulate(whole, centralSet(whole));
    const leftAfterYear = first.left[52] as number;
    const later = bed({
      start: '2026-02-28',
      applications: [lime(0.5, 0.15, '2025-03-01')],
      present: { mean: 5.6, sd: 0.1 },
    });
    const second = simulate(later, centralSet(later));
    expect(second.left[0] as number).toBeLessThan(0.9);
    expect(Math.abs((second.left[0] as number) - leftAfterYear)).toBeLessThan(0.1);
  });
});

describe('forecast', () => {
  it('is the same for the same seed and differs for another', () => {
    const input = bed({ applications: [lime(0.4)] });
    expect(forecast(input)).toEqual(forecast(input));
    expect(forecast({ ...input, seed: 2 }).median).not.toEqual(forecast(input).median);
  });

  it('nests its bands and widens them for a retest', () => {
    const { bands, retestBands, median, dates } = forecast(bed({ applications: [lime(0.4)] }));
    expect(bands.map(({ share }) => share)).toEqual([0.5, 0.8, 0.95]);
    for (let t = 0; t < dates.length; t += 10) {
      const lows = bands.map(({ low }) => low[t] as number);
      const highs = bands.map(({ high }) => high[t] as number);
      expect(lows[0]).toBeGreaterThanOrEqual(lows[1] as number);
      expect(lows[1]).toBeGreaterThanOrEqual(lows[2] as number);
      expect(highs[2]).toBeGreaterThanOrEqual(highs[1] as number);
      expect(median[t]).toBeGreaterThanOrEqual(lows[0] as number);
      expect(median[t]).toBeLessThanOrEqual(highs[0] as number);
      expect((retestBands[1]?.high[t] ?? 0) - (retestBands[1]?.low[t] ?? 0)).toBeGreaterThan(
        (highs[1] as number) - (lows[1] as number),
      );
    }
  });

  it('says no retest within three months of ground limestone (dynamics 7) nor later than three years', () => {
    const { retest } = forecast(bed({ applications: [lime(0.4)] }));
    expect(retest.date >= '2026-06-14').toBe(true);
    expect(retest.date <= '2029-03-01').toBe(true);
  });

  it('records a derivation without gaps', () => {
    const recorder = createRecorder();
    forecast(bed({ applications: [lime(0.4)], members: 50 }), recorder);
    expect(gaps(recorder.derivation())).toEqual([]);
  });

  it('refuses bad input by field', () => {
    expect(() => forecast(bed({ years: 9 }))).toThrow(/years/);
    expect(() => forecast(bed({ applications: [lime(-0.4)] }))).toThrow(/currency/);
  });

  it('warns of sour ground', () => {
    const { cautions } = forecast(bed({ applications: [sulfur(4)] }));
    expect(cautions.map(({ code }) => code)).toContain('forecast.danger-sour');
  });
});

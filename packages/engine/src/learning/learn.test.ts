import { grade } from '@sorrel/almanac/assumed-sieves';
import { en } from '@sorrel/almanac/words';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createRecorder, gaps } from '../derivation/derivation.ts';
import type { SoilTest } from '../evidence/soil-test.ts';
import { forecast } from '../forecast/forecast.ts';
import type { ForecastApplication } from '../forecast/types.ts';
import { combine } from '../requirement/combine.ts';
import { checkRecord } from './check.ts';
import { learn } from './learn.ts';
import { LEAST_SD } from './reading.ts';
import { MOST_PER_RETEST } from './resistance.ts';
import type { BedRecord } from './types.ts';

const TODAY = '2026-06-01';
const lime = (date: string, currency: number): ForecastApplication => ({
  date,
  currency,
  reaction: { law: 'dissolving', sieves: grade('fine limestone'), speed: 1 },
  incorporation: 0.15,
});
const laboratory = (date: string, value: number, over: Partial<SoilTest> = {}): SoilTest => ({
  id: `lab ${date} ${value}`,
  date,
  instrument: 'laboratory',
  depth: 0.15,
  cores: 12,
  ph: { value, method: 'water-1:1' },
  ...over,
});
const home = (date: string, value: number): SoilTest =>
  laboratory(date, value, { id: `home ${date}`, instrument: 'slurry-meter' });
const bed = (
  tests: readonly SoilTest[],
  applications: readonly ForecastApplication[] = [],
  over: Partial<BedRecord> = {},
): BedRecord => ({
  tests,
  applications,
  layer: { depth: 0.15, bulkDensity: 1200, coarseFragments: 0, mass: 180 },
  curve: { beta0: 0.0021, sdLog: 0.45, pm: 5.6, w: 1.6, carbonate: 0, plateau: 7.9 },
  medium: 'mineral',
  weather: { climate: 'maritime' },
  ...over,
});
const options = { today: TODAY, members: 50 };
const codes = (record: BedRecord) => learn(record, options).messages.map(({ code }) => code);

const stubborn = bed(
  [laboratory('2021-03-01', 5.2), laboratory('2023-03-01', 5.6), laboratory('2025-03-01', 5.9)],
  [lime('2021-04-01', 0.8), lime('2023-04-01', 0.8)],
);

const anyTest = fc
  .record({
    year: fc.integer({ min: 2018, max: 2025 }),
    month: fc.integer({ min: 1, max: 12 }),
    ph: fc.integer({ min: 45, max: 75 }),
    kind: fc.constantFrom<SoilTest['instrument']>('laboratory', 'laboratory', 'slurry-meter', 'colour-kit'),
    method: fc.constantFrom('water-1:1', 'water-1:1', 'cacl2-0.01M'),
  })
  .map(({ year, month, ph, kind, method }) =>
    laboratory(`${year}-${String(month).padStart(2, '0')}-15`, ph / 10, {
      instrument: kind,
      ph: { value: ph / 10, method: method as 'water-1:1' },
    }),
  );
const anyLime = fc
  .record({ year: fc.integer({ min: 2018, max: 2025 }), amount: fc.integer({ min: 1, max: 9 }) })
  .map(({ year, amount }) => lime(`${year}-04-01`, amount / 10));
const anyRecord = fc
  .record({ tests: fc.array(anyTest, { maxLength: 5 }), applications: fc.array(anyLime, { maxLength: 2 }) })
  .map(({ tests, applications }) => bed(tests, applications));

describe('no hidden state', () => {
  it('the order in which entries arrived does not matter', () => {
    fc.assert(
      fc.property(
        anyRecord.chain((record) =>
          fc.record({
            record: fc.constant(record),
            tests: fc.shuffledSubarray([...record.tests], { minLength: record.tests.length }),
            applications: fc.shuffledSubarray([...record.applications], { minLength: record.applications.length }),
          }),
        ),
        ({ record, tests, applications }) => {
          expect(learn({ ...record, tests, applications }, options)).toEqual(learn(record, options));
        },
      ),
      { numRuns: 25 },
    );
  });

  it('a late entry counts as if it had always been there; a deleted or mended one as if it had never been wrong', () => {
    fc.assert(
      fc.property(anyRecord, anyTest, (record, late) => {
        const whole = { ...record, tests: [...record.tests, late] };
        const before = learn(record, options);
        const withLate = learn(whole, options);
        learn({ ...record, tests: [...record.tests, { ...late, ph: { value: 3.1, method: 'water-1:1' } }] }, options);
        expect(learn({ ...record, tests: [late, ...record.tests] }, options)).toEqual(withLate);
        expect(learn({ ...whole, tests: whole.tests.filter((test) => test !== late) }, options)).toEqual(before);
      }),
      { numRuns: 20 },
    );
  });

  it('the same seed gives the same answer, another seed nearly the same', () => {
    const one = learn(stubborn, options);
    expect(learn(stubborn, options)).toEqual(one);
    const other = learn(stubborn, { ...options, seed: 99 });
    expect(other.resistance.factor).not.toBe(one.resistance.factor);
    expect(Math.abs(Math.log(other.resistance.factor / one.resistance.factor))).toBeLessThan(0.12);
  });

  it('never breaks and never grows surer than the readings allow', () => {
    fc.assert(
      fc.property(anyRecord, (record) => {
        const { resistance, present, reading, curve, tests, leftOut } = learn(record, options);
        expect(resistance.median).toBeGreaterThan(0);
        expect(curve.sdLog).toBeLessThanOrEqual(record.curve.sdLog);
        if (reading) expect(reading.sdLog).toBeGreaterThanOrEqual(LEAST_SD);
        if (present) expect(present.sd).toBeGreaterThan(0.05);
        // Every test is used, or left out with a reason: none is lost.
        const told = new Set([...tests.flatMap(({ ids }) => ids), ...leftOut.map(({ test }) => test.id)]);
        for (const test of record.tests) expect(told).toContain(test.id);
      }),
      { numRuns: 40 },
    );
  });
});

describe('what a bed teaches', () => {
  it('a bed that rises less than expected resists more, and says so with how sure we are', () => {
    const { resistance, messages, reading, curve } = learn(stubborn, options);
    expect(resistance.factor).toBeGreaterThan(1.2);
    expect(resistance.chanceMore).toBeGreaterThan(0.8);
    expect(resistance.sdLog).toBeLessThan(resistance.prior.sdLog);
    expect(messages[0]?.code).toBe('learning.resists-more');
    expect(Object.keys(messages[0]?.parameters ?? {})).toEqual(expect.arrayContaining(['more', 'sure', 'low', 'high']));
    expect(reading?.kind).toBe('response');
    expect(curve.beta0).toBeGreaterThan(0.0021);
  });

  it('a bed that rises more than expected resists less', () => {
    const easy = bed([laboratory('2021-03-01', 5.2), laboratory('2023-03-01', 6.9)], [lime('2021-04-01', 0.5)]);
    expect(codes(easy)[0]).toBe('learning.resists-less');
  });

  it('a tiny dose and a tiny change teach almost nothing, and that is said (dynamics 7)', () => {
    const record = bed([laboratory('2021-03-01', 5.5), laboratory('2023-03-01', 5.6)], [lime('2021-04-01', 0.04)]);
    const { resistance, reading, messages } = learn(record, options);
    expect(Math.abs(Math.log(resistance.factor))).toBeLessThan(0.1);
    expect(resistance.sdLog).toBeGreaterThan(0.93 * resistance.prior.sdLog);
    expect(reading).toBeUndefined();
    expect(messages[0]?.code).toBe('learning.taught-little-change');
  });

  it('one test, or tests with nothing spread between, teach no resistance', () => {
    expect(codes(bed([laboratory('2025-03-01', 6)]))).toEqual(['learning.one-test']);
    const watched = bed([laboratory('2023-03-01', 6), laboratory('2025-03-01', 5.9)]);
    expect(codes(watched)[0]).toBe('learning.nothing-judged');
    expect(learn(watched, options).reading).toBeUndefined();
    expect(codes(bed([]))).toEqual(['learning.no-tests']);
  });

  it('one retest changes the resistance by a factor 2 at most, two by 4 (dynamics 7)', () => {
    const [dull, wild] = [
      bed([laboratory('2021-03-01', 5.2), laboratory('2023-03-01', 5.5)], [lime('2021-04-01', 1.5)]),
      bed([laboratory('2021-03-01', 5.2), laboratory('2023-03-01', 7.3)], [lime('2021-04-01', 0.5)]),
    ];
    for (const [record, factor] of [
      [dull, MOST_PER_RETEST],
      [wild, 1 / MOST_PER_RETEST],
    ] as const) {
      const { resistance, messages, reading } = learn(record, options);
      expect(resistance.factor).toBeCloseTo(factor, 9);
      expect(resistance.capped).toBe(true);
      expect(messages.map(({ code }) => code)).toContain('learning.capped');
      expect(reading).toBeDefined();
    }
    fc.assert(
      fc.property(anyRecord, (record) => {
        const learned = learn(record, options);
        const teaching = learned.tests.filter(({ role }) => role === 'learned from').length;
        const retests = learned.judged === 0 ? 0 : teaching - 1;
        const moved = Math.abs(Math.log(learned.resistance.factor));
        expect(moved).toBeLessThanOrEqual(retests * Math.log(MOST_PER_RETEST) + 0.002);
      }),
      { numRuns: 20 },
    );
  });

  it('the reading brings the reconciler to the posterior when the prior is its other reading', () => {
    const mild = bed([laboratory('2021-03-01', 5.2), laboratory('2023-03-01', 6)], [lime('2021-04-01', 0.7)]);
    const { resistance, reading } = learn(mild, options);
    expect(resistance.capped).toBe(false);
    const prior = {
      method: 'any',
      kind: 'texture',
      logBeta0: Math.log(resistance.prior.median),
      sdLog: resistance.prior.sdLog,
      pure: 0,
      methodTargetPh: 6.5,
      published: { value: 0, unit: '' },
    } as const;
    const together = combine(reading === undefined ? [] : [prior, reading]);
    expect(together.disagree).toBe(false);
    expect(together.logBeta0).toBeCloseTo(resistance.meanLog, 9);
    expect(together.sdLog).toBeCloseTo(resistance.sdLog, 9);
  });
});

describe('which tests may teach', () => {
  const before = laboratory('2021-03-01', 5.2);
  const after = laboratory('2023-03-01', 6);
  const spread = [lime('2021-04-01', 0.6)];
  const plain = learn(bed([before, after], spread), options);

  it.each([
    ['within three months of ground limestone', laboratory('2021-06-15', 7.4), 'learning.too-soon'],
    [
      'by another method',
      laboratory('2022-09-01', 7.4, { ph: { value: 7.4, method: 'kcl-1M' } }),
      'learning.other-method',
    ],
    ['from another depth', laboratory('2022-09-01', 7.4, { depth: 0.3 }), 'learning.other-depth'],
    ['in the future', laboratory('2027-09-01', 7.4), 'learning.in-future'],
  ])('not one %s', (_, extra, code) => {
    const learned = learn(bed([before, extra, after], spread), options);
    // To a hair: another day in the list makes no other runs.
    expect(learned.resistance.factor).toBeCloseTo(plain.resistance.factor, 6);
    expect(learned.messages.map((message) => message.code)).toContain(code);
  });

  it('a test too soon still tells the pH of its day', () => {
    const late = learn(
      bed([before, after, laboratory('2026-05-01', 6.6)], [...spread, lime('2026-04-01', 0.5)]),
      options,
    );
    const without = learn(bed([before, after], [...spread, lime('2026-04-01', 0.5)]), options);
    expect(late.present?.mean ?? 0).toBeGreaterThan((without.present?.mean ?? 0) + 0.1);
  });

  it('replicates of a day are averaged as pH, the laboratory error kept whole (CON26; dynamics 6)', () => {
    const [one] = learn(bed([laboratory('2025-03-01', 5), laboratory('2025-03-01', 7)]), options).tests;
    expect(one?.ph).toBeCloseTo(6, 9);
    const many = Array.from({ length: 50 }, (_, i) => laboratory('2025-03-01', 6, { id: `r${i}` }));
    const [all] = learn(bed(many), options).tests;
    expect(all?.sd ?? 0).toBeGreaterThan(0.12);
    expect(all?.ids.length).toBe(50);
  });

  it('a home reading teaches less than the laboratory', () => {
    const rough = learn(bed([before, home('2023-03-01', 5.4)], spread), options);
    const fine = learn(bed([before, laboratory('2023-03-01', 5.4)], spread), options);
    expect(rough.resistance.freeSdLog).toBeGreaterThan(fine.resistance.freeSdLog);
  });
});

describe('a reading that does not fit', () => {
  const good = [
    laboratory('2020-03-01', 6),
    laboratory('2021-03-01', 6),
    laboratory('2023-03-01', 5.9),
    laboratory('2024-03-01', 5.9),
  ];
  const odd = laboratory('2022-03-01', 7.6);

  it('is pointed out with what was expected, still on the list, and hardly moves the answer', () => {
    const learned = learn(bed([...good, odd]), options);
    const flagged = learned.tests.filter(({ outlier }) => outlier);
    expect(flagged.map(({ date }) => date)).toEqual(['2022-03-01']);
    expect(flagged[0]?.expected?.mean).toBeCloseTo(5.95, 1);
    expect(learned.tests.length).toBe(5);
    expect(learned.messages.map(({ code }) => code)).toContain('learning.outlier');
    const without = learn(bed(good), options);
    const moved = (learned.present?.mean ?? 0) - (without.present?.mean ?? 0);
    expect(Math.abs(moved)).toBeLessThan(0.06);
  });

  it('is not thrown away: the answer without it is another', () => {
    expect(learn(bed([...good, odd]), options).present?.mean).not.toBe(learn(bed(good), options).present?.mean);
  });

  it('readings that fit are not pointed out', () => {
    expect(learn(bed(good), options).tests.some(({ outlier }) => outlier)).toBe(false);
    expect(learn(stubborn, options).tests.some(({ outlier }) => outlier)).toBe(false);
  });

  it('of two that do not fit, asks to repeat the newer', () => {
    const pair = learn(bed([laboratory('2023-03-01', 5.2), laboratory('2024-03-01', 7.4)]), options);
    expect(pair.messages.map(({ code }) => code)).toContain('learning.unexpected');
  });
});

describe('what leaves the room', () => {
  it('members for a forecast that starts at the present pH with the learned resistance', () => {
    const { parameters, present, resistance, curve } = learn(stubborn, { ...options, members: 400 });
    const middle = (list: Float64Array | undefined) => [...(list ?? [])].sort((a, b) => a - b)[200] as number;
    expect(middle(parameters?.ph0)).toBeCloseTo(present?.median ?? 0, 1);
    expect(Math.abs(Math.log(middle(parameters?.beta0) / resistance.median))).toBeLessThan(0.08);
    const ahead = forecast({
      start: TODAY,
      layer: stubborn.layer,
      curve,
      present: { mean: present?.mean ?? 0, sd: present?.sd ?? 0 },
      medium: 'mineral',
      applications: [],
      ...(parameters === undefined ? {} : { parameters }),
    });
    expect(ahead.members).toBe(400);
    expect(ahead.median[0]).toBeCloseTo(present?.median ?? 0, 1);
  });

  it('a derivation without gaps, and words for every message', () => {
    fc.assert(
      fc.property(anyRecord, (record) => {
        const recorder = createRecorder();
        const { messages } = learn(record, options, recorder);
        expect(gaps(recorder.derivation())).toEqual([]);
        for (const { code, parameters } of messages) {
          const holes = [...en[code].matchAll(/\{([^}]+)\}/g)].map(([, name]) => name);
          expect(Object.keys(parameters ?? {})).toEqual(expect.arrayContaining(holes));
        }
      }),
      { numRuns: 20 },
    );
  });

  it('bad entries by field, value and mending', () => {
    const record = bed([laboratory('2025-13-01', 6), laboratory('2025-03-01', 60)]);
    const problems = checkRecord(record, options);
    expect(problems.map(({ field }) => field)).toEqual(['tests[0].date', 'tests[1].ph.value']);
    for (const { fix, message } of problems) expect(fix.length * message.length).toBeGreaterThan(0);
    expect(() => learn(record, options)).toThrow(/tests\[0\]/);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createRecorder, gaps } from '../derivation/derivation.ts';
import { averagePh } from './average-ph.ts';
import { presentPh } from './present-ph.ts';
import type { SoilTest } from './soil-test.ts';
import { testSd } from './test-error.ts';

const TODAY = '2025-05-01';
let count = 0;
const test = (ph: number, more: Partial<SoilTest> = {}): SoilTest => ({
  id: `t${count++}`,
  date: '2025-04-15',
  instrument: 'laboratory',
  laboratory: 'A',
  depth: 0.15,
  cores: 12,
  ph: { value: ph, method: 'water-1:1' },
  ...more,
});
const codes = (messages: readonly { readonly code: string }[]) => messages.map((one) => one.code);

describe('averagePh', () => {
  it('averages pH as it is', () => {
    // Composites read the mean of the cores' pH, not of [H+], which would give 5.30 (CON26).
    expect(averagePh([5, 7])).toBe(6);
    expect(() => averagePh([])).toThrow(RangeError);
  });

  it('stays within its readings', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 2, max: 11, noNaN: true }), { minLength: 1, maxLength: 20 }), (values) => {
        const mean = averagePh(values);
        expect(mean).toBeGreaterThanOrEqual(Math.min(...values));
        expect(mean).toBeLessThanOrEqual(Math.max(...values));
      }),
    );
  });
});

describe('testSd', () => {
  it('gives the published error of a good composite', () => {
    // 12 cores or more, one good laboratory: 0.15 (FV55 for sampling plus analysis; between laboratories from memory).
    expect(testSd(test(6))).toBeCloseTo(0.15, 2);
  });

  it('shrinks with cores, but never below the instrument', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 100 }), (cores) => {
        expect(testSd(test(6, { cores: cores + 1 }))).toBeLessThan(testSd(test(6, { cores })));
        expect(testSd(test(6, { cores }))).toBeGreaterThan(0.12);
      }),
    );
  });
});

describe('presentPh', () => {
  it('takes one test as it is, wider with age', () => {
    const fresh = presentPh([test(6.1)], TODAY);
    expect(fresh?.mean).toBe(6.1);
    expect(fresh?.sd).toBeCloseTo(0.15, 1);
    expect(fresh?.mayDose).toBe(true);
    const old = presentPh([test(6.1, { date: '2020-05-01' })], TODAY);
    // 0.10 a root year (MODEL): sqrt(0.148² + 5·0.01).
    expect(old?.sd).toBeCloseTo(0.268, 2);
    expect(codes(old?.notes ?? [])).toContain('evidence.old-test');
  });

  it('gives nothing without a usable pH', () => {
    expect(presentPh([], TODAY)).toBeUndefined();
    expect(presentPh([test(6, { date: '2026-01-01' })], TODAY)).toBeUndefined();
    const salty = test(5.5, { ph: { value: 5.5, method: 'cacl2-0.01M' }, conductivity: 0.1 });
    expect(presentPh([salty], TODAY)).toBeUndefined();
  });

  it('averages the replicates of a day without shrinking the laboratory error', () => {
    const many = presentPh(
      [5.8, 6, 6.2, 6, 6, 6, 6, 6].map((ph) => test(ph)),
      TODAY,
    );
    expect(many?.mean).toBeCloseTo(6, 9);
    expect(many?.sd).toBeGreaterThanOrEqual(0.12);
    expect(many?.sd).toBeLessThan(presentPh([test(6)], TODAY)?.sd ?? 0);
  });

  it('weighs the newer and the better test more', () => {
    const both = presentPh([test(5.6, { date: '2023-04-15' }), test(6)], TODAY);
    expect(both?.mean).toBeGreaterThan(5.8);
    const home = test(6.4, { instrument: 'colour-kit', cores: 5 });
    const mixed = presentPh([home, test(6)], TODAY);
    expect(mixed?.mean).toBeLessThan(6.1);
    expect(mixed?.used).toHaveLength(2);
  });

  it('sets aside and names a home reading far from the laboratory', () => {
    const home = test(8, { instrument: 'slurry-meter' });
    const present = presentPh([test(6), home], TODAY);
    expect(present?.mean).toBe(6);
    expect(present?.setAside.map((one) => [one.test.id, one.reason.code])).toEqual([
      [home.id, 'evidence.home-differs'],
    ]);
    expect(codes(present?.notes ?? [])).toContain('evidence.home-differs');
  });

  it('never lets a dose rest on home readings alone', () => {
    for (const instrument of ['slurry-meter', 'colour-kit', 'strip', 'probe'] as const) {
      const present = presentPh([test(6, { instrument })], TODAY);
      expect(present?.mayDose).toBe(false);
      expect(codes(present?.notes ?? [])).toContain('evidence.home-only');
    }
  });

  it('drops tests from before the last application once there is a newer one', () => {
    const before = test(5.2, { date: '2024-03-01' });
    const options = { applications: [{ date: '2024-04-01' }] };
    const after = presentPh([before, test(6)], TODAY, options);
    expect(after?.mean).toBe(6);
    expect(after?.setAside[0]?.reason.code).toBe('evidence.before-application');
    const only = presentPh([before], TODAY, options);
    expect(only?.mean).toBe(5.2);
    expect(codes(only?.notes ?? [])).toContain('evidence.changed-since');
  });

  it('warns of a test within three months of an application, and of an autumn test', () => {
    const soon = presentPh([test(6)], TODAY, { applications: [{ date: '2025-03-01' }] });
    expect(codes(soon?.notes ?? [])).toContain('evidence.soon-after-application');
    const autumn = test(6, { date: '2024-10-10' });
    expect(codes(presentPh([autumn], TODAY)?.notes ?? [])).toContain('evidence.autumn-test');
    expect(codes(presentPh([autumn], TODAY, { hemisphere: 'south' })?.notes ?? [])).not.toContain(
      'evidence.autumn-test',
    );
    const salt = test(5.5, { date: '2024-10-10', ph: { value: 5.5, method: 'cacl2-0.01M' } });
    expect(codes(presentPh([salt], TODAY)?.notes ?? [])).not.toContain('evidence.autumn-test');
  });

  it('uses the pH measured in water when the laboratory gave both', () => {
    const salt = test(5.1, { ph: { value: 5.1, method: 'cacl2-0.01M' } });
    const present = presentPh([salt, test(6)], TODAY);
    expect(present?.mean).toBe(6);
    expect(present?.setAside[0]?.reason.code).toBe('evidence.water-measured');
  });

  it('keeps potting-mix tests apart from soil tests', () => {
    const mix = test(5.6, { ph: { value: 5.6, method: 'pour-through' } });
    expect(presentPh([mix], TODAY)).toMatchObject({ mean: 5.6, scale: 'media' });
    expect(presentPh([mix, test(6)], TODAY)).toMatchObject({ mean: 6, scale: 'water' });
    expect(presentPh([mix, test(6)], TODAY, { media: true })).toMatchObject({ mean: 5.6, scale: 'media' });
  });

  it('is less sure when tests disagree', () => {
    const agree = presentPh([test(6), test(6.1, { laboratory: 'B' })], TODAY);
    const differ = presentPh([test(5), test(7, { laboratory: 'B' })], TODAY);
    expect(differ?.sd).toBeGreaterThan(3 * (agree?.sd ?? 9));
    expect(codes(differ?.notes ?? [])).toContain('evidence.tests-differ');
  });

  it('lies within its tests, in any order of them', () => {
    const anyTest = fc.record({
      ph: fc.double({ min: 4, max: 8, noNaN: true }),
      year: fc.integer({ min: 2015, max: 2024 }),
      instrument: fc.constantFrom('laboratory', 'slurry-meter', 'colour-kit', 'strip', 'probe'),
    });
    fc.assert(
      fc.property(fc.array(anyTest, { minLength: 1, maxLength: 6 }), (list) => {
        const tests = list.map(({ ph, year, instrument }) =>
          test(ph, { date: `${year}-04-01`, instrument: instrument as 'strip' }),
        );
        const present = presentPh(tests, TODAY);
        const values = present?.used.map((one) => one.mean) ?? [];
        expect(present?.mean).toBeGreaterThanOrEqual(Math.min(...values) - 1e-9);
        expect(present?.mean).toBeLessThanOrEqual(Math.max(...values) + 1e-9);
        expect(presentPh([...tests].reverse(), TODAY)?.mean).toBeCloseTo(present?.mean ?? 0, 9);
        expect((present?.used.length ?? 0) + (present?.setAside.length ?? 0)).toBe(tests.length);
      }),
    );
  });

  it('tells how it came about', () => {
    const recorder = createRecorder();
    presentPh(
      [test(5.4, { ph: { value: 5.4, method: 'cacl2-0.01M' }, laboratory: 'B' }), test(6)],
      TODAY,
      {},
      recorder,
    );
    expect(gaps(recorder.derivation())).toEqual([]);
    expect(recorder.derivation().steps.at(-1)?.symbol).toBe('pH');
  });
});

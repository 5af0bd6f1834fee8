import fc from 'fast-check';
import { jStat } from 'jstat';
import { describe, expect, it } from 'vitest';
import { createRecorder, gaps } from '../derivation/derivation.ts';
import type { SoilTest } from '../evidence/soil-test.ts';
import { chiSquareLimit } from './chi-square.ts';
import { combine } from './combine.ts';
import type { Reading } from './method.ts';
import { methodById, methods } from './methods.ts';
import { type ReconcileInput, reconcile } from './reconcile.ts';

const layer = { depth: 0.15, bulkDensity: 1300, coarseFragments: 0, mass: 195 };
const test: SoilTest = {
  id: 'a',
  date: '2026-03-01',
  instrument: 'laboratory',
  depth: 0.15,
  ph: { value: 5.4, method: 'water-1:1' },
};
const texture = { name: 'loam', parts: { sand: 0.4, silt: 0.4, clay: 0.2 }, basis: 'class' } as const;
const base: ReconcileInput = {
  present: { mean: 5.4, sd: 0.12 },
  targetPh: 6.5,
  layer,
  medium: 'mineral',
  tests: [test],
};
const withTest = (more: Partial<SoilTest>): ReconcileInput => ({ ...base, tests: [{ ...test, ...more }] });
const sikora = { buffer: { value: 6.3, method: 'sikora' } } as const;
const ids = (readings: readonly Reading[]) => readings.map((reading) => reading.method);
const codes = (input: ReconcileInput) => reconcile(input).ask.map((message) => message.code);

const fake = (logBeta0: number, sdLog: number): Reading => ({
  method: 'fake',
  kind: 'response',
  logBeta0,
  sdLog,
  pure: 1,
  methodTargetPh: 6.5,
  published: { value: 1, unit: '1' },
});

describe('weighing readings', () => {
  it('has the chi-square quantiles of an independent library', () => {
    for (let degrees = 1; degrees <= 15; degrees++)
      expect(chiSquareLimit(degrees)).toBeCloseTo(jStat.chisquare.inv(0.95, degrees), 2);
    expect(() => chiSquareLimit(0)).toThrow(RangeError);
  });

  it('gives the precision-weighted mean, and never more certainty than 0.15', () => {
    const { logBeta0, sdLog, disagree } = combine([fake(1, 0.3), fake(1.2, 0.6)]);
    expect(logBeta0).toBeCloseTo((1 * 4 + 1.2) / 5, 9);
    expect(sdLog).toBeCloseTo(1 / Math.sqrt(1 / 0.09 + 1 / 0.36), 9);
    expect(disagree).toBe(false);
    expect(combine([fake(1, 0.15), fake(1, 0.15), fake(1, 0.2)]).sdLog).toBe(0.15);
    expect(() => combine([])).toThrow(RangeError);
  });

  it('widens by the Birge ratio when the readings disagree', () => {
    const apart = combine([fake(0, 0.3), fake(2, 0.3)]);
    expect(apart.disagree).toBe(true);
    expect(apart.sdLog).toBeCloseTo((0.3 / Math.SQRT2) * Math.sqrt(apart.chiSquare), 9);
  });

  it('stays between the readings and does not care for their order', () => {
    const one = fc.record({
      at: fc.double({ min: -8, max: -4, noNaN: true }),
      sd: fc.double({ min: 0.15, max: 1, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(one, { minLength: 1, maxLength: 8 }), (list) => {
        const readings = list.map(({ at, sd }) => fake(at, sd));
        const { logBeta0, sdLog } = combine(readings);
        expect(logBeta0).toBeGreaterThanOrEqual(Math.min(...list.map(({ at }) => at)) - 1e-9);
        expect(logBeta0).toBeLessThanOrEqual(Math.max(...list.map(({ at }) => at)) + 1e-9);
        expect(combine([...readings].reverse()).sdLog).toBeCloseTo(sdLog, 9);
      }),
    );
  });
});

describe('reconciling the evidence of a place', () => {
  it('gives no rate from a pH alone, and says what to find out, best first', () => {
    const { curve, used } = reconcile(base);
    expect(curve).toBeUndefined();
    expect(used).toEqual([]);
    expect(codes(base)).toEqual([
      'requirement.ask-buffer',
      'requirement.ask-texture',
      'requirement.ask-organic-matter',
    ]);
    expect(codes({ ...base, region: 'North Carolina' })[0]).toBe('requirement.ask-buffer-named');
  });

  it('asks for half a dose on texture alone, with garden charts only beside it', () => {
    const { used, beside, curve } = reconcile({ ...base, texture });
    expect(ids(used)).toEqual(['texture-only']);
    expect(ids(beside)).toContain('garden-tables');
    expect(curve?.sdLog).toBe(0.6);
    expect(codes({ ...base, texture })[0]).toBe('requirement.half-dose');
  });

  it('lets texture alone fall silent once the organic matter is known, from the place or a test', () => {
    const both = reconcile({ ...base, texture, organicMatter: 0.04 });
    expect(ids(both.used)).toEqual(['ptf-curtin-trolove']);
    expect(ids(both.beside)).not.toContain('garden-tables');
    const tested = reconcile({ ...withTest({ organicMatter: 0.04 }), texture });
    expect(tested.curve?.beta0).toBeCloseTo(both.curve?.beta0 ?? 0, 12);
  });

  it('lets the method of the region speak, and Oregon where the region is unknown', () => {
    const smp = withTest({ buffer: { value: 6.3, method: 'smp' } });
    const speaks = (region?: string) => ids(reconcile(region === undefined ? smp : { ...smp, region }).used);
    expect(speaks('Ohio')).toEqual(['smp-tristate']);
    expect(speaks('Kansas')).toEqual(['kansas']);
    expect(speaks('Iowa')).toEqual(['smp-table-pure']);
    expect(speaks()).toEqual(['osu-sikora']);
    expect(codes(smp)).toEqual(['requirement.ask-region']);
    expect(speaks('Oregon')).toEqual(['osu-sikora']);
  });

  it('counts what one report prints about one measurement once', () => {
    const printed = { rate: 0.5, depth: 0.15, targetPh: 6.5, neutralisingValue: 1 };
    const one = reconcile(withTest({ ...sikora, region: 'Oregon', printedRate: printed }));
    expect(ids(one.used)).toEqual(['printed-rate']);
    expect(ids(one.beside)).toContain('osu-sikora');
    const older = { ...test, id: 'b', date: '2024-03-01', ...sikora, region: 'Oregon' };
    const two = reconcile({ ...base, tests: [{ ...test, printedRate: printed }, older] });
    expect(ids(two.used)).toEqual(['printed-rate', 'osu-sikora']);
  });

  it('reads an older figure with the pH of its own test', () => {
    const older: SoilTest = {
      ...test,
      id: 'b',
      date: '2024-03-01',
      ph: { value: 5.0, method: 'water-1:1' },
      ...sikora,
    };
    const now: ReconcileInput = { ...base, present: { mean: 5.9, sd: 0.12 }, tests: [test, older] };
    const then = reconcile({ ...base, present: { mean: 5.0, sd: 0.12 }, tests: [older] });
    expect(reconcile(now).curve?.beta0).toBeCloseTo(then.curve?.beta0 ?? 0, 12);
  });

  it('refuses a buffer it has no table for, and asks for the printed rate', () => {
    for (const method of ['sikora-2', 'moore-sikora', 'woodruff', 'modified-woodruff'] as const) {
      const input = withTest({ buffer: { value: 6.2, method } });
      const { outside, curve } = reconcile(input);
      expect(curve).toBeUndefined();
      expect(outside).toMatchObject([{ method, reason: { code: 'requirement.outside-buffer' } }]);
      expect(codes(input)[0]).toBe('requirement.ask-printed-rate');
    }
    expect(reconcile(withTest({ buffer: { value: 6.2, method: 'modified-mehlich' } })).outside).toHaveLength(1);
    expect(reconcile(withTest({ buffer: { value: 6.2, method: 'modified-mehlich' }, acidity: 0.06 })).outside).toEqual(
      [],
    );
  });

  it('says so when the evidence disagrees, and is less sure', () => {
    const input = {
      ...withTest({ buffer: { value: 5.0, method: 'sikora' }, region: 'Oregon' }),
      texture: { ...texture, parts: { sand: 0.95, silt: 0.03, clay: 0.02 } },
      organicCarbon: 0.003,
    } as const;
    const { disagree, curve, used } = reconcile(input);
    expect(used).toHaveLength(2);
    expect(disagree).toBe(true);
    expect(curve?.sdLog).toBeGreaterThan(0.5);
    expect(codes(input)).toContain('requirement.ask-again');
  });

  it('keeps a guess from the medium to itself once anything is measured', () => {
    const mix = reconcile({ ...base, medium: 'mix' });
    expect(ids(mix.used)).toEqual(['compost-bed']);
    const measured = reconcile({ ...withTest({ ...sikora, region: 'Oregon' }), medium: 'mix' });
    expect(ids(measured.used)).toEqual(['osu-sikora']);
    expect(ids(measured.beside)).toContain('compost-bed');
    expect(codes({ ...base, medium: 'soilless', tests: [] })).toEqual(['requirement.ask-jar']);
  });

  it('takes a bed’s own answer as the first of voices, and hands on the free lime', () => {
    const own = fake(Math.log(0.002), 0.15);
    const { used, curve } = reconcile({ ...withTest(sikora), readings: [own], carbonate: 0.01, plateau: 7.8 });
    expect(used[0]).toBe(own);
    expect(curve).toMatchObject({ carbonate: 0.01, plateau: 7.8 });
  });

  it('leaves a derivation without gaps, and the same answer as without one', () => {
    const inputs: readonly ReconcileInput[] = [
      { ...withTest({ ...sikora, region: 'Oregon' }), texture, organicMatter: 0.04 },
      { ...base, texture },
      { ...base, medium: 'organic', present: { mean: 4.6, sd: 0.1 }, targetPh: 5.2 },
      { ...base, texture, organicMatter: 0.03, present: { mean: 6.8, sd: 0.1 }, targetPh: 5.5 },
    ];
    for (const input of inputs) {
      const recorder = createRecorder();
      expect(reconcile(input, recorder)).toEqual(reconcile(input));
      expect(gaps(recorder.derivation())).toEqual([]);
      expect(recorder.derivation().steps.length).toBeGreaterThan(3);
    }
  });

  it('is never below nothing, and asks more of the soil with a lower buffer pH', () => {
    const value = fc.double({ min: 4.9, max: 6.7, noNaN: true });
    fc.assert(
      fc.property(value, value, (a, b) => {
        const at = (bufferPh: number) =>
          reconcile({ ...withTest({ buffer: { value: bufferPh, method: 'sikora' } }), texture, organicCarbon: 0.02 })
            .curve?.beta0 ?? Number.NaN;
        expect(at(Math.max(a, b))).toBeGreaterThan(0);
        expect(at(Math.min(a, b))).toBeGreaterThanOrEqual(at(Math.max(a, b)) * (1 - 1e-9));
      }),
    );
  });
});

describe('the registry', () => {
  it('has each method once, under its own name', () => {
    expect(new Set(methods.map((method) => method.id)).size).toBe(methods.length);
    for (const method of methods) expect(methodById(method.id)).toBe(method);
  });
});

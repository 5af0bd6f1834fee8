import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { agreementOf, controlChart, judgeCheck, qualityPlan, SOUND_METER_SD, toRepeat } from './index.ts';

describe('qualityPlan', () => {
  it('has a duplicate for every tenth sample, a reference for every twentieth and the buffer at both ends', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), (samples) => {
        const plan = qualityPlan(samples);
        const count = (check: string) => plan.filter((step) => step.check === check).length;
        expect(count('duplicate')).toBe(Math.floor(samples / 10));
        expect(count('reference')).toBe(1 + Math.floor(samples / 20));
        expect(plan[0]).toEqual({ check: 'buffer', after: 0 });
        expect(plan.filter(({ check }) => check === 'buffer').at(-1)?.after).toBe(samples);
        expect(plan.map(({ after }) => after)).toEqual(plan.map(({ after }) => after).sort((a, b) => a - b));
      }),
    );
    expect(qualityPlan(0)).toEqual([]);
    expect(() => qualityPlan(2.5)).toThrow(RangeError);
  });
});

describe('judgeCheck', () => {
  it('passes on the limit and fails beyond it', () => {
    expect(judgeCheck('buffer', 7.0, 7.1).passed).toBe(true);
    expect(judgeCheck('buffer', 7.0, 7.11).passed).toBe(false);
    expect(judgeCheck('reference', 5.4, 5.2)).toMatchObject({ passed: true, limit: 0.2 });
    expect(judgeCheck('duplicate', 6.1, 6.31).passed).toBe(false);
  });
});

describe('controlChart', () => {
  // NIST_EWMA, the example of section 6.3.2.4 (figures from memory): target 50, s 2.0539, weight 0.3.
  const values = [
    52, 47, 53, 49.3, 50.1, 47, 51, 50.1, 51.2, 50.5, 49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1,
  ];
  const printed = [
    50.6, 49.52, 50.56, 50.18, 50.16, 49.21, 49.75, 49.85, 50.26, 50.33, 50.11, 49.36, 49.52, 50.05, 49.38, 49.92,
    50.73, 51.23, 51.94, 51.99,
  ];
  it('follows the worked example of the handbook', () => {
    const chart = controlChart(values, 50, 2.0539, 0.3);
    for (const [index, point] of chart.entries()) expect(point.trend).toBeCloseTo(printed[index] ?? 0, 2);
    // 52.5884 and 47.4115 are printed for the limits once they have settled.
    expect(chart.at(-1)?.high).toBeCloseTo(52.5884, 2);
    expect(chart.at(-1)?.low).toBeCloseTo(47.4115, 2);
    expect(chart.every(({ beyond }) => beyond === 'nothing')).toBe(true);
  });
  it('sees a slow drift before any single check fails', () => {
    const drifting = Array.from({ length: 14 }, (_, index) => index * 0.008);
    const chart = controlChart(drifting, 0, SOUND_METER_SD);
    const first = chart.findIndex(({ beyond }) => beyond === 'trend');
    expect(first).toBeGreaterThan(0);
    expect(judgeCheck('buffer', 7, 7 + (drifting[first] ?? 0)).passed).toBe(true);
  });
  it('refuses what makes no chart', () => {
    expect(() => controlChart([0], 0, 0)).toThrow(RangeError);
    expect(() => controlChart([0], 0, 1, 0)).toThrow(RangeError);
    expect(controlChart([], 0, 1)).toEqual([]);
  });
});

describe('toRepeat', () => {
  const reading = (order: number, meter = 'A') => ({ id: `s${order}${meter}`, order, meter });
  it('names what was read between the last good check and the next, by that meter only', () => {
    const checks = [
      { order: 0, meter: 'A', passed: true },
      { order: 11, meter: 'A', passed: true },
      { order: 22, meter: 'A', passed: false },
      { order: 23, meter: 'A', passed: true },
    ];
    const readings = [reading(5), reading(12), reading(21), reading(24), reading(15, 'B')];
    expect(toRepeat(checks, readings)).toEqual(['s12A', 's21A']);
  });
  it('doubts everything when no check ever passed, and nothing when all did', () => {
    const readings = [reading(1), reading(3)];
    expect(toRepeat([{ order: 2, meter: 'A', passed: false }], readings)).toEqual(['s1A', 's3A']);
    expect(toRepeat([{ order: 2, meter: 'A', passed: true }], readings)).toEqual([]);
  });
});

describe('agreementOf', () => {
  it('gives the standard deviation from duplicates', () => {
    // Two pairs 0.2 and 0.1 apart: sqrt((0.04 + 0.01) / 4).
    expect(
      agreementOf([
        [6, 6.2],
        [5.5, 5.4],
      ])?.sd,
    ).toBeCloseTo(Math.sqrt(0.0125), 12);
    expect(
      agreementOf([
        [6, 6.2],
        [5, 5.3],
      ]),
    ).toMatchObject({ pairs: 2, agree: 1 });
    expect(agreementOf([])).toBeUndefined();
  });
});

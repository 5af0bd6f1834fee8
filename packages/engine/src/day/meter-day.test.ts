import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { doubtfulReadings } from './doubtful-readings.ts';
import { dueChecks, type MeterAct } from './due-checks.ts';
import { type MeterCheck, meterHistory } from './meter-history.ts';
import { qualityPlan } from './quality-plan.ts';

const buffers = (...offs: number[]): MeterCheck[] =>
  offs.map((off, order) => ({ id: `c${order}`, order, check: 'buffer', expected: 7, shown: 7 + off }));

describe('dueChecks', () => {
  it('asks, check by check, for the very plan of a day whose number of samples was known', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 80 }), (samples) => {
        const acts: MeterAct[] = [];
        const done: { check: string; after: number }[] = [];
        for (let read = 0; read <= samples; read++) {
          for (const check of dueChecks(acts, samples - read)) {
            acts.push({ did: check, sound: true });
            done.push({ check, after: read });
          }
          if (read < samples) acts.push({ did: 'reading' });
        }
        expect(done).toEqual(qualityPlan(samples));
      }),
    );
  });

  it('asks for a failed buffer again before the next reading, and not for a failed duplicate', () => {
    const good: MeterAct[] = [
      { did: 'buffer', sound: true },
      { did: 'reference', sound: true },
    ];
    expect(dueChecks(good, 5)).toEqual([]);
    expect(dueChecks([...good, { did: 'buffer', sound: false }], 5)).toEqual(['buffer']);
    expect(dueChecks([...good, { did: 'duplicate', sound: false }], 5)).toEqual([]);
    expect(dueChecks([], 0)).toEqual([]);
  });
});

describe('meterHistory', () => {
  it('finds a slow drift before any single check is beyond 0.1', () => {
    const verdicts = meterHistory(buffers(0, 0.03, 0.05, 0.06, 0.07, 0.08, 0.08));
    expect(verdicts.every(({ passed }) => passed)).toBe(true);
    expect(verdicts.some(({ point }) => point?.beyond === 'trend')).toBe(true);
    expect(verdicts.findIndex(({ sound }) => !sound)).toBeGreaterThan(2);
  });

  it('starts the chart anew after the meter was calibrated', () => {
    const verdicts = meterHistory(buffers(0.02, 0.15, 0.01));
    expect(verdicts.map(({ sound }) => sound)).toEqual([true, false, true]);
    // Worked by hand: the first point of a chart has a trend of 0.2 times the value.
    expect(verdicts[2]?.point?.trend).toBeCloseTo(0.002, 10);
  });

  it('holds reference soil to 0.2 and leaves it off the chart', () => {
    const [verdict] = meterHistory([{ id: 'r', order: 1, check: 'reference', expected: 6.3, shown: 6.45 }]);
    expect(verdict).toMatchObject({ passed: true, sound: true });
    expect(verdict?.point).toBeUndefined();
  });
});

describe('doubtfulReadings', () => {
  const reading = (id: string, order: number, meter = 'A') => ({ id, sample: id.toUpperCase(), order, meter });
  const check = (order: number, sound: boolean, meter = 'A') => ({ check: 'buffer' as const, order, sound, meter });

  it('names what lies between the last good check and the next good one, of that meter only', () => {
    const doubtful = doubtfulReadings(
      [check(1, true), check(5, false), check(6, true), check(1, true, 'B')],
      [reading('a', 2), reading('b', 3), reading('c', 3.5, 'B'), reading('d', 7)],
    );
    expect(doubtful).toEqual([
      { id: 'a', why: 'meter' },
      { id: 'b', why: 'meter' },
    ]);
  });

  it('asks for a sample again whose second reading differed, until it was read anew', () => {
    const twice = { check: 'duplicate' as const, order: 4, sound: false, meter: 'A', sample: 'B' };
    const all = [check(1, true), twice, check(9, true)];
    expect(doubtfulReadings(all, [reading('a', 2), reading('b', 3)])).toEqual([{ id: 'b', why: 'duplicate' }]);
    expect(doubtfulReadings(all, [reading('a', 2), reading('b', 5)])).toEqual([]);
  });
});

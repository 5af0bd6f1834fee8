import { describe, expect, it } from 'vitest';
import { forecast } from './forecast.ts';
import { emptySet, PARAMETER_NAMES, thinned } from './parameter-set.ts';
import { sketch } from './sketch.ts';
import type { ForecastInput } from './types.ts';

const input: ForecastInput = {
  start: '2026-10-12',
  layer: { depth: 0.15, bulkDensity: 1200, mass: 180 },
  curve: { beta0: 0.004, sdLog: 0.25, pm: 6, w: 1, plateau: 8, carbonate: 0 },
  present: { mean: 5.4, sd: 0.15 },
  medium: 'mineral',
  applications: [{ date: '2026-11-01', currency: 0.5, reaction: { law: 'fast', days: 30 }, incorporation: 0.15 }],
  range: { low: 6, high: 7 },
} as unknown as ForecastInput;

describe('a sketch', () => {
  // Against the full forecast; the room is what so few members and steps of three weeks leave (own rule).
  it('is near the forecast, whose dates it shares', () => {
    const [few, all] = [sketch(input), forecast(input)];
    expect(few.dates.every((date) => all.dates.includes(date))).toBe(true);
    for (const [index, date] of few.dates.entries()) {
      const at = all.dates.indexOf(date);
      expect(Math.abs((few.median[index] ?? 0) - (all.median[at] ?? 0))).toBeLessThan(0.12);
      for (const band of few.bands) {
        const same = all.bands.find(({ share }) => share === band.share);
        expect(Math.abs((band.low[index] ?? 0) - (same?.low[at] ?? 0))).toBeLessThan(0.3);
        expect(Math.abs((band.high[index] ?? 0) - (same?.high[at] ?? 0))).toBeLessThan(0.3);
      }
    }
  });

  it('is the same every time, and follows what is put on', () => {
    expect(sketch(input)).toEqual(sketch(input));
    const { applications: _, ...without } = input;
    const rest = sketch({ ...without, applications: [] });
    expect(sketch(input).median.at(20)).toBeGreaterThan((rest.median.at(20) ?? 0) + 0.2);
  });

  it('takes members evenly from a larger set', () => {
    const set = emptySet(500);
    for (const name of PARAMETER_NAMES) for (let m = 0; m < 500; m++) set[name][m] = m;
    const few = thinned(set, 50);
    expect(few.count).toBe(50);
    expect([...few.beta0]).toEqual(Array.from({ length: 50 }, (_, m) => m * 10 + 5));
    expect(thinned(set, 500)).toBe(set);
  });
});

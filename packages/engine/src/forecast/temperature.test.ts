import { climates } from '@sorrel/almanac/climates';
import { describe, expect, it } from 'vitest';
import { YEAR_DAYS } from './dates.ts';
import { amplitudeAt, dampingDepth, soilTemperature, temperatureOn, yearlyWave } from './temperature.ts';

describe('soil temperature', () => {
  it('has the published damping depth and amplitude (OKS-R)', () => {
    expect(dampingDepth(5e-7, 86_400) * 100).toBeCloseTo(11.7, 1);
    expect(amplitudeAt(7, 0.1, 0.117)).toBeCloseTo(3.0, 1);
    expect(dampingDepth(5e-7, 86_400 * 365) / dampingDepth(5e-7, 86_400)).toBeCloseTo(19.1, 1);
  });

  it('solves the heat equation: an explicit difference scheme gives the same after it has settled', () => {
    const alpha = 5e-7;
    const wave = { mean: 10, amplitude: 8, crest: 200 };
    const dz = 0.1;
    const dt = 2 * 3600;
    const cells = 160;
    const share = (alpha * dt) / dz ** 2;
    expect(share).toBeLessThan(0.5);
    let state = new Float64Array(cells).fill(wave.mean);
    const steps = Math.round((6 * YEAR_DAYS * 86_400) / dt);
    for (let n = 1; n <= steps; n++) {
      const next = new Float64Array(cells);
      next[0] = soilTemperature(wave, 0, (n * dt) / 86_400, alpha);
      for (let i = 1; i < cells - 1; i++)
        next[i] =
          (state[i] as number) +
          share * ((state[i - 1] as number) - 2 * (state[i] as number) + (state[i + 1] as number));
      next[cells - 1] = next[cells - 2] as number;
      state = next;
    }
    const day = (steps * dt) / 86_400;
    for (const depth of [0.1, 0.5, 1, 2])
      expect(state[Math.round(depth / dz)]).toBeCloseTo(soilTemperature(wave, depth, day, alpha), 1);
  });

  it('finds the wave that made the months', () => {
    const monthly = Array.from({ length: 12 }, (_, month) => {
      let sum = 0;
      for (let i = 0; i < 200; i++)
        sum += soilTemperature(
          { mean: 11, amplitude: 9, crest: 205 },
          0,
          ((month + (i + 0.5) / 200) / 12) * YEAR_DAYS,
          5e-7,
        );
      return sum / 200;
    });
    const wave = yearlyWave(monthly);
    expect(wave.mean).toBeCloseTo(11, 6);
    expect(wave.amplitude).toBeCloseTo(9, 3);
    expect(wave.crest).toBeCloseTo(205, 1);
  });

  it('comes within two degrees of the tabled 10 cm soil of each typical climate (from memory) where nothing freezes', () => {
    for (const { air, soil } of climates) {
      if (soil === undefined || Math.min(...air) < 0) continue;
      const at = temperatureOn({ monthly: air, kind: 'air', depth: 0.1 });
      for (const [month, tabled] of soil.entries())
        expect(Math.abs(at(((month + 0.5) / 12) * YEAR_DAYS) - tabled)).toBeLessThan(2.1);
    }
  });

  it('keeps the ground at freezing under snow but lets a pot freeze', () => {
    const monthly = [-10, -8, -3, 5, 12, 18, 21, 20, 14, 7, 0, -7];
    expect(temperatureOn({ monthly, kind: 'air', depth: 0.1 })(15)).toBe(0);
    expect(temperatureOn({ monthly, kind: 'container', depth: 0.1 })(15)).toBeLessThan(-9);
  });
});

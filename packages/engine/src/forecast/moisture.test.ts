import { climates } from '@sorrel/almanac/climates';
import { describe, expect, it } from 'vitest';
import { dayLength, potentialEvaporation, waterYear } from './moisture.ts';

describe('water balance', () => {
  it('has twelve hours of daylight at the equinox and about seventeen at 52° in June (common knowledge)', () => {
    expect(dayLength(52, 80)).toBeCloseTo(12, 0);
    expect(dayLength(52, 172)).toBeGreaterThan(16);
    expect(dayLength(-38, 172)).toBeLessThan(10);
  });

  it('evaporates 550 to 750 mm a year in maritime north-west Europe (common practice, no source)', () => {
    const maritime = climates.find(({ name }) => name === 'maritime');
    const year = potentialEvaporation(maritime?.air ?? [], 52).reduce((sum, month) => sum + month, 0);
    expect(year).toBeGreaterThan(0.55);
    expect(year).toBeLessThan(0.75);
  });

  it('stays between wilting and field capacity, never drains more than falls, and answers to irrigation', () => {
    for (const { air, rain, latitude } of climates) {
      const dry = waterYear({ rain, air, latitude });
      const wet = waterYear({ rain, air, latitude, irrigation: 0.3 });
      const sum = (list: readonly number[]) => list.reduce((total, value) => total + value, 0);
      for (const moisture of dry.moisture) {
        expect(moisture).toBeGreaterThanOrEqual(0.35);
        expect(moisture).toBeLessThanOrEqual(1);
      }
      expect(sum(dry.drainage)).toBeLessThanOrEqual(sum(rain) + 1e-9);
      expect(sum(wet.irrigation)).toBeCloseTo(0.3, 2);
      expect(sum(wet.moisture)).toBeGreaterThan(sum(dry.moisture));
    }
  });
});

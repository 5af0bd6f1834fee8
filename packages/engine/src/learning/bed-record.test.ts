import { describe, expect, it } from 'vitest';
import { defaultProduct } from '../materials/product.ts';
import type { Place } from '../plan/place.ts';
import { bedRecord } from './bed-record.ts';
import { learn } from './learn.ts';

const layer = { depth: 0.15, bulkDensity: 1200, coarseFragments: 0, mass: 180 };
const curve = { beta0: 0.0021, sdLog: 0.45, pm: 5.6, w: 1.6, carbonate: 0, plateau: 7.9 };
const place: Place = {
  id: 'a',
  name: 'North bed',
  kind: 'bed',
  situation: 'open ground',
  medium: 'mineral',
  area: 4,
  depth: 0.15,
  plants: [],
  tests: [
    {
      id: '1',
      date: '2022-04-01',
      instrument: 'laboratory',
      depth: 0.15,
      cores: 12,
      ph: { value: 5.3, method: 'water-1:1' },
    },
    {
      id: '2',
      date: '2024-04-01',
      instrument: 'laboratory',
      depth: 0.15,
      cores: 12,
      ph: { value: 5.9, method: 'water-1:1' },
    },
  ],
  applications: [
    { date: '2022-04-10', material: 'calcitic-limestone', currency: 0.4 },
    { date: '2023-04-10', material: 'sulfur-powder', currency: -0.1 },
    { date: '2023-05-10', material: 'moon dust', currency: 0.05 },
  ],
};

describe('the record of a place', () => {
  it('takes the fineness of lime out again, because the grains decide when it works', () => {
    const { applications } = bedRecord(place, layer, curve);
    const { efficiency } = defaultProduct('calcitic-limestone');
    expect(efficiency).toBeLessThan(1);
    expect(applications[0]?.reaction.law).toBe('dissolving');
    expect(applications[0]?.currency).toBeCloseTo(0.4 / efficiency, 9);
    expect(applications[1]?.reaction.law).toBe('oxidising');
    expect(applications[1]?.currency).toBe(-0.1);
    expect(applications[2]?.reaction).toEqual({ law: 'fast', days: 14 });
  });

  it('is mixed through in open ground, on top of a lawn, raked in around plants', () => {
    const depth = (situation: Place['situation']) =>
      bedRecord({ ...place, situation }, layer, curve).applications[0]?.incorporation;
    expect([depth('open ground'), depth('around plants'), depth('lawn')]).toEqual([0.15, 0.05, 0]);
  });

  it('carries the water along and can be learned from', () => {
    const record = bedRecord({ ...place, water: { alkalinity: 3, perYear: 0.3 } }, layer, curve);
    expect(record.weather?.irrigation).toBe(0.3);
    expect(record.yearly?.waterAlkalinity).toBe(3);
    expect(learn(record, { today: '2024-06-01' }).judged).toBe(3);
  });
});

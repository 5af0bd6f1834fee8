import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Place, Settings } from '../plan/place.ts';
import { recommend } from '../plan/recommend.ts';
import { textureOf } from '../soil/texture-of.ts';
import { anonymous, callsFor, type PlannedSample, SMALLEST_SHOWN, summaryOf } from './index.ts';

const settings: Settings = { today: '2026-11-01', overshootChance: 0.05, hemisphere: 'north', finenessSystem: 'OH' };
const loam = textureOf({ texture: 'loam' });
function sample(code: string, ph: number, neighbourhood?: string, lead?: number): PlannedSample {
  const place: Place = {
    id: code,
    name: code,
    kind: 'bed',
    situation: 'open ground',
    medium: 'mineral',
    area: 3,
    depth: 0.15,
    plants: [],
    tests: [
      {
        id: `${code}-t`,
        date: '2026-10-20',
        instrument: 'laboratory',
        depth: 0.15,
        ph: { value: ph, method: 'water-1:1' },
        texture: 'loam',
        organicMatter: 0.04,
        ...(lead === undefined ? {} : { lead }),
      },
    ],
    applications: [],
    ...(loam === undefined ? {} : { texture: loam }),
  };
  const plan = recommend(place, [], settings);
  return neighbourhood === undefined ? { code, place, plan } : { code, place, plan, neighbourhood };
}

describe('summaryOf', () => {
  const day = [
    sample('01', 5.0, 'Mill side'),
    sample('02', 5.2, 'Mill side'),
    sample('03', 6.5, 'Hill'),
    sample('04', 6.4),
    sample('05', 5.1, 'Hill', 900e-6),
  ];
  const summary = summaryOf(day);
  it('counts every sample once in each table', () => {
    const sum = (counts: readonly { readonly count: number }[]) =>
      counts.reduce((total, { count }) => total + count, 0);
    expect(summary.samples).toBe(5);
    expect(sum(summary.decisions)).toBe(5);
    expect(sum(summary.all.classes)).toBe(5);
    expect(summary.neighbourhoods.map(({ name, samples }) => [name, samples])).toEqual([
      ['Hill', 2],
      ['Mill side', 2],
      [undefined, 1],
    ]);
    expect(summary.neighbourhoods[1]?.medianPh).toBeCloseTo(5.1, 1);
  });
  it('adds up what to buy from the first steps of everybody', () => {
    const firsts = day.flatMap(({ plan }) => plan.applications.filter(({ onlyIfRetest }) => !onlyIfRetest));
    const mass = firsts.reduce((total, each) => total + each.mass, 0);
    expect(mass).toBeGreaterThan(0);
    expect(summary.shopping.reduce((total, { needed }) => total + needed, 0)).toBeCloseTo(mass, 9);
  });
  it('says who is to be called, and why', () => {
    expect(summary.calls.map(({ code }) => code)).toEqual(['05']);
    expect(summary.calls[0]?.why[0]?.code).toMatch(/^plan\.caution-lead/);
  });
  it('has somebody called when a home reading is far from the laboratory', () => {
    const { place } = sample('06', 6.5);
    const home = { id: 'h', date: '2026-10-25', instrument: 'strip', depth: 0.15 } as const;
    const differing = {
      ...place,
      tests: [...place.tests, { ...home, ph: { value: 4.5, method: 'water-1:1' as const } }],
    };
    const plan = recommend(differing, [], settings);
    expect(callsFor({ plan }).map(({ code }) => code)).toEqual(['evidence.home-differs']);
  });
});

describe('anonymous', () => {
  it('names no neighbourhood with few samples, nor lets the unnamed ones be few', () => {
    const names = fc.constantFrom('a', 'b', 'c', undefined);
    fc.assert(
      fc.property(fc.array(fc.tuple(names, fc.integer({ min: 45, max: 80 })), { maxLength: 40 }), (rows) => {
        const samples = rows.map(([name, tenths], index) => sample(String(index), tenths / 10, name));
        const out = anonymous(samples);
        expect(out).toHaveLength(samples.length);
        const counts = new Map<string | undefined, number>();
        for (const { neighbourhood } of out) counts.set(neighbourhood, (counts.get(neighbourhood) ?? 0) + 1);
        if (samples.length >= SMALLEST_SHOWN)
          for (const count of counts.values()) expect(count).toBeGreaterThanOrEqual(SMALLEST_SHOWN);
        for (const each of out) expect(Object.keys(each).sort()).toEqual(['decision', 'neighbourhood', 'ph']);
      }),
      { numRuns: 60 },
    );
  });
});

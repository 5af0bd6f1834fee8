import { describe, expect, it } from 'vitest';
import { lime, settings } from '../../laws/gardens.ts';
import { textureOf } from '../soil/texture-of.ts';
import { foresee, seenTests, yearOfTheSame } from './foresee.ts';
import { lessons } from './lessons.ts';
import type { Place } from './place.ts';
import { planGarden } from './plan-garden.ts';
import { recommend } from './recommend.ts';

const texture = textureOf({ texture: 'silt loam' });
const test = (date: string, value: number) => ({
  id: date,
  date,
  instrument: 'laboratory' as const,
  depth: 0.15,
  cores: 12,
  ph: { value, method: 'water-1:1' as const },
});
const bed: Place = {
  id: 'p1',
  name: 'Bed',
  kind: 'bed',
  situation: 'open ground',
  medium: 'mineral',
  area: 5,
  depth: 0.15,
  plants: [],
  target: { low: 6, high: 7 },
  organicMatter: 0.04,
  tests: [test('2026-09-20', 5.2), test('2024-09-20', 5.4)],
  applications: [],
  ...(texture === undefined ? {} : { texture }),
};
const pot: Place = {
  ...bed,
  kind: 'container',
  situation: 'container',
  medium: 'soilless',
  depth: 0.3,
  area: 1,
  volume: 0.3,
  tests: [{ ...test('2026-09-20', 6.2), ph: { value: 6.2, method: 'media-extract' } }],
  water: { alkalinity: 4, perYear: 0.6 },
};
const seen = (place: Place, ...rest: Parameters<typeof foresee> extends [Place, ...infer R] ? R : never) => {
  const found = foresee(place, ...rest);
  return 'why' in found ? expect.fail(found.why.code) : found;
};

describe('foresee', () => {
  it('puts tests in order, each with its own error, and marks what is planned', () => {
    const plan = recommend(bed, [lime], settings);
    const { tests, marks, range } = seen(bed, settings, plan.applications, { years: 1, members: 20 });
    expect(tests.map(({ date }) => date)).toEqual(['2024-09-20', '2026-09-20']);
    for (const { sd } of tests) expect(sd).toBeGreaterThan(0.05);
    expect(marks).toHaveLength(plan.applications.length);
    expect(marks[0]).toMatchObject({ state: 'planned', effect: 'sweetens' });
    expect(range).toEqual({ low: 6, high: 7 });
  });
  it('says why nothing can be foreseen', () => {
    expect(foresee({ ...bed, tests: [] }, settings, [])).toEqual({ why: { code: 'plan.no-forecast-ph' } });
    const { texture: _, organicMatter: __, ...bare } = bed;
    expect(foresee(bare, settings, [])).toEqual({ why: { code: 'plan.no-forecast-soil' } });
  });
  it('lets the water of a pot act on the pot as deep as it is', () => {
    const gain = (place: Place) => {
      const { ph } = yearOfTheSame(place, settings) ?? expect.fail('no year');
      return ph.end - ph.start;
    };
    // The same water on half the mix moves the pH about twice as far.
    const ratio = gain({ ...pot, depth: 0.15 }) / gain(pot);
    expect(ratio).toBeGreaterThan(1.5);
    expect(ratio).toBeLessThan(2.5);
  });
  it('has nothing to say of a test without a pH', () => {
    const { ph: _, ...blank } = test('2026-01-01', 6);
    expect(seenTests({ ...bed, tests: [blank] }, settings)).toEqual([]);
  });
});

describe('lessons', () => {
  it('learns a trend from tests alone, and nothing about the resistance', () => {
    const tests = [2019, 2020, 2021, 2022, 2023, 2024, 2025, 2026].map((year) =>
      test(`${year}-09-20`, 8 - (year - 2016) * 0.25),
    );
    const learned = lessons({ ...bed, tests }, settings);
    expect(learned?.trend?.slope ?? 0).toBeCloseTo(-0.25, 1);
    expect(learned?.judged).toBe(0);
    expect(lessons({ ...bed, tests: [] }, settings)).toBeUndefined();
  });
});

describe('planGarden with the forecast', () => {
  it('tells how far it has come, and keeps the working of both', () => {
    const done: number[] = [];
    const garden = { name: 'g', places: [bed, bed], products: [lime], settings, currencySymbol: '' };
    const plan = planGarden(garden, {
      explain: true,
      forecast: true,
      explainForecast: true,
      onPlace: (count) => done.push(count),
    });
    expect(done).toEqual([1, 2]);
    const steps = plan.recommendations[0]?.derivation?.steps ?? [];
    expect(steps.map(({ index }) => index)).toEqual(steps.map((_, index) => index));
    expect(steps.some(({ symbol }) => symbol === 'Q0')).toBe(true);
    for (const { terms, index } of steps) for (const term of terms) expect(term.step ?? -1).toBeLessThan(index);
  });
});

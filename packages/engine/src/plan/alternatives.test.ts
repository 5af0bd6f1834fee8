import { describe, expect, it } from 'vitest';
import { lime, settings } from '../../laws/gardens.ts';
import { textureOf } from '../soil/texture-of.ts';
import { alternatives } from './alternatives.ts';
import { outlook } from './outlook.ts';
import type { Place } from './place.ts';
import { recommend } from './recommend.ts';
import { refineByForecast } from './refine.ts';

const texture = textureOf({ texture: 'silt loam' });
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
  tests: [
    {
      id: 't1',
      date: '2026-09-20',
      instrument: 'laboratory',
      depth: 0.15,
      cores: 12,
      ph: { value: 5.2, method: 'water-1:1' },
      buffer: { value: 6.4, method: 'sikora' },
      organicMatter: 0.04,
    },
  ],
  applications: [],
  ...(texture === undefined ? {} : { texture }),
};
const plan = recommend(bed, [lime], settings);

describe('outlook', () => {
  it('rises with the plan and only drifts without it', () => {
    const nothing = outlook(bed, settings, [], { members: 300 });
    const limed = outlook(bed, settings, plan.applications, { members: 300 });
    expect(Math.abs((nothing?.median.at(-1) ?? 0) - 5.2)).toBeLessThan(0.4);
    expect(limed?.median[52] ?? 0).toBeGreaterThan((nothing?.median[52] ?? 0) + 0.3);
  });

  it('is silent where nothing tells how much the soil resists', () => {
    const { texture: _, ...bare } = bed;
    const tests = bed.tests.map(({ buffer: __, organicMatter: ___, ...test }) => test);
    expect(outlook({ ...bare, tests }, settings, [])).toBeUndefined();
  });

  it('counts lime of earlier years that is still at work', () => {
    const limedBefore: Place = {
      ...bed,
      applications: [{ date: '2026-08-01', material: 'calcitic-limestone', currency: 0.4 }],
    };
    const before = outlook(limedBefore, settings, [], { members: 300 });
    const never = outlook(bed, settings, [], { members: 300 });
    expect(before?.median[60] ?? 0).toBeGreaterThan((never?.median[60] ?? 0) + 0.1);
  });
});

describe('refineByForecast', () => {
  it('never makes a dressing larger, and gives the chance of the forecast', () => {
    const refined = refineByForecast(bed, settings, plan);
    expect(refined.applications[0]?.mass ?? 0).toBeLessThanOrEqual(plan.applications[0]?.mass ?? 0);
    expect(refined.overshootChance ?? 1).toBeLessThanOrEqual(settings.overshootChance);
  });

  it('never gives more lime where the water brings more of its own', () => {
    const first = (alkalinity: number) => {
      const place = { ...bed, target: { low: 5.7, high: 6.3 }, water: { alkalinity, perYear: 0.6 } };
      const refined = refineByForecast(place, settings, recommend(place, [lime], settings));
      return refined.applications[0]?.mass ?? 0;
    };
    const doses = [0, 3, 6, 12, 24].map(first);
    expect(doses[0]).toBeGreaterThan(0);
    // A step of the search may end a tenth above the last one.
    for (let i = 1; i < doses.length; i++) expect(doses[i] ?? 0).toBeLessThanOrEqual((doses[i - 1] ?? 0) * 1.1);
    expect(doses.at(-1) ?? 0).toBeLessThan((doses[0] ?? 0) * 0.9);
  });
});

describe('alternatives', () => {
  const list = alternatives(bed, settings, plan, [lime], 300);
  const of = (kind: string) => list.find((one) => one.kind === kind);

  it('puts doing nothing, the plan, other plants and a pot side by side', () => {
    expect(list.map(({ kind }) => kind)).toEqual(
      expect.arrayContaining(['do nothing', 'the plan', 'all at once', 'other plants', 'container']),
    );
    expect(of('do nothing')?.months).toBeUndefined();
    expect(of('the plan')?.insideAfterYear ?? 0).toBeGreaterThan(of('do nothing')?.insideAfterYear ?? 1);
    expect(of('other plants')?.plants?.length).toBeGreaterThan(0);
  });

  it('closes a way that passes the published maximum, with the reason', () => {
    const deep = { ...bed, depth: 0.3 };
    const much = alternatives(deep, settings, recommend(deep, [lime], settings), [lime], 100);
    const whole = much.find(({ kind }) => kind === 'all at once');
    expect(whole?.applications).toEqual([]);
    expect(whole?.notes[0]?.code).toBe('plan.alternative-over-maximum');
  });

  it('offers nothing above the range that lime could not be blamed for', () => {
    for (const one of list) expect(one.overshoot ?? 0).toBeLessThan(0.5);
  });
});

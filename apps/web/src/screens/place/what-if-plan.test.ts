import { readGarden } from '@sorrel/engine/document';
import { recommend } from '@sorrel/engine/plan';
import { describe, expect, it } from 'vitest';
import { wishedPlan } from './what-if-plan.ts';

const { garden, problems } = readGarden(
  {
    garden: 'Test',
    places: [
      {
        name: 'Bed',
        size: '4 x 24 ft',
        depth: '6 in',
        soil: { texture: 'loam', organicMatter: '5.5 %' },
        plants: ['tomato'],
        tests: [
          {
            date: '2026-09-14',
            by: 'laboratory',
            depth: '6 in',
            cores: 12,
            ph: { value: 5.3, in: 'water-1:1' },
            buffer: { value: 6.2, kind: 'sikora' },
          },
        ],
      },
    ],
    materials: [
      { material: 'calcitic-limestone', name: 'mine', cce: '96 %' },
      { material: 'dolomitic-limestone', name: 'other', cce: '102 %' },
    ],
  },
  { today: '2026-10-12' },
);
const [place] = garden.places;
const { products, settings } = garden;
if (place === undefined) throw new Error('The place could not be read.');
const plan = recommend(place, products, settings);
const ask = (wish: Parameters<typeof wishedPlan>[5]) => wishedPlan(place, plan, products, products, settings, wish);
const total = (from: { readonly applications: readonly { readonly mass: number }[] }) =>
  from.applications.reduce((sum, { mass }) => sum + mass, 0);

describe('a what-if', () => {
  it('starts from a plan with work in it', () => {
    expect(problems).toEqual([]);
    expect(plan.applications.length).toBeGreaterThan(0);
  });

  it('is the plan itself when nothing is wished', () => {
    expect(ask({}).plan).toEqual(plan);
  });

  // Deeper work and a higher aim need more lime; common practice, no source.
  it('asks for more for a deeper layer and a higher aim', () => {
    expect(total(ask({ depth: place.depth * 1.5 }).plan)).toBeGreaterThan(total(plan));
    expect(total(ask({ aim: plan.target.aim + 0.2 }).plan)).toBeGreaterThan(total(plan));
  });

  it('uses the material that was picked', () => {
    for (const [index, product] of products.entries())
      for (const each of ask({ product: index }).plan.applications) expect(each.product.name).toBe(product.name);
  });

  it('starts no work before the day that was wished', () => {
    for (const each of ask({ day: '2027-03-15' }).plan.applications) expect(each.latest >= '2027-03-15').toBe(true);
  });

  it('keeps an aim outside the range inside its own target', () => {
    const target = ask({ aim: 7.6 }).place.target;
    expect(target?.high).toBeGreaterThan(7.6);
    expect(target?.low).toBe(plan.target.low);
  });
});

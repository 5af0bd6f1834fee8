import { readGarden } from '@sorrel/engine/document';
import { recommend, refineByForecast } from '@sorrel/engine/plan';
import { describe, expect, it } from 'vitest';
import { quickAnswer, restedAnswer } from './wished-picture.ts';
import { type Wish, wishedPlan } from './wished-plan.ts';

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
const wishing = { place, plan, own: products, offered: products, settings };
const ask = (wish: Wish) => wishedPlan(wishing, wish, 'once');
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

describe('a what-if of a bed that has learned', () => {
  const bed = {
    name: 'Bed',
    size: '4 x 24 ft',
    depth: '6 in',
    soil: { texture: 'loam' },
    plants: ['tomato'],
    applications: [{ date: '2024-10-19', material: 'mine', amount: '5 lb' }],
    tests: [
      { date: '2024-09-15', by: 'laboratory', depth: '6 in', ph: { value: 5.0, in: 'water-1:1' } },
      { date: '2026-09-14', by: 'laboratory', depth: '6 in', ph: { value: 5.3, in: 'water-1:1' } },
    ],
  };
  const read = readGarden(
    {
      garden: 'Test',
      places: [bed],
      materials: [{ material: 'calcitic-limestone', name: 'mine', cce: '96 %' }],
    } as never,
    { today: '2026-10-12' },
  ).garden;
  const there = read.places[0] as typeof place;
  const learned = recommend(there, read.products, read.settings, { explain: true });
  const at = { place: there, plan: learned, own: read.products, offered: read.products, settings: read.settings };
  const dose = (plan: typeof learned) => plan.applications.map(({ mass }) => mass);

  it('has a lesson to go by', () => {
    expect(learned.learned?.judged).toBe(1);
    expect(learned.applications.length).toBeGreaterThan(0);
  });

  it('says at rest what the plan says, when the wish is what the plan has', () => {
    const wish = { aim: learned.target.aim, depth: there.depth, product: 0, day: read.settings.today };
    expect(dose(wishedPlan(at, wish, 'rest').plan)).toEqual(dose(learned));
    const held = refineByForecast(there, read.settings, learned);
    expect(dose(restedAnswer(at, wish).held ?? learned)).toEqual(dose(held));
  });

  // At another depth the earlier lime would have been mixed into more or less soil, which teaches something else; a fifth
  // is the room for that (own rule).
  it('says nearly the same while a slider moves as when it rests', () => {
    for (const wish of [{ aim: 6.6 }, { depth: 0.25 }, { day: '2027-03-01' }, { aim: 6.2, depth: 0.1 }]) {
      const [quick, rest] = [quickAnswer(at, wish).plan, wishedPlan(at, wish, 'rest').plan];
      expect(Math.abs(Math.log(total(quick) / total(rest)))).toBeLessThan(0.2);
    }
  });

  it('draws a picture at once, near to the one at rest', () => {
    const wish = { aim: 6.6 };
    const [quick, rest] = [quickAnswer(at, wish).picture, restedAnswer(at, wish).picture];
    expect(quick?.bands.map(({ share }) => share)).toEqual(rest?.bands.map(({ share }) => share));
    const middle = rest?.dates.indexOf(quick?.dates.at(20) ?? '') ?? -1;
    expect(Math.abs((quick?.median.at(20) ?? 0) - (rest?.median.at(middle) ?? 0))).toBeLessThan(0.2);
  });
});

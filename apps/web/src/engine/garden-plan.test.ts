import { readFileSync } from 'node:fs';
import { planGarden } from '@sorrel/engine/plan';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import type { GardenRecord } from '../data/garden-store.ts';
import { planRecord, withHeld, withoutHeld } from './garden-plan.ts';

const demo = (file: string) => parse(readFileSync(new URL(`../../../../demo/${file}`, import.meta.url), 'utf8'));
function recordOf(document: GardenRecord['document']): GardenRecord {
  const places = document.places.map((_, index) => ({ id: `bed-${index}` }));
  return { id: 'garden', version: 1, document, from: { places } } as unknown as GardenRecord;
}
// A pot of this garden gets less by the forecast, and it has products of its own.
const quick = planRecord(recordOf(demo('rooftop-containers.yaml')), '2026-11-25');
const { garden } = quick.read;
const plan = planGarden(garden, { explain: true, forecast: true });
// What comes from a worker is a copy.
const copy = structuredClone({ plan, products: garden.products });
const held = withHeld(quick, copy.plan, copy.products);
const doses = (places: typeof quick.places) =>
  places.map((place) => place.plan?.applications.map(({ mass }) => mass) ?? []);

describe('a plan held to the forecast', () => {
  it('starts as the quick one, with the places named whose doses are to be checked', () => {
    expect(quick.held).toBe('under way');
    expect(quick.places.map(({ checking }) => checking)).toEqual(doses(quick.places).map(({ length }) => length > 0));
  });

  it('gives the doses of the engine', () => {
    expect(doses(held.places)).toEqual(plan.recommendations.map(({ applications }) => applications.map((a) => a.mass)));
    expect(doses(held.places)).not.toEqual(doses(quick.places));
    expect(held.places.some(({ checking }) => checking)).toBe(false);
    expect([held.held, withoutHeld(quick).held]).toEqual(['yes', 'failed']);
  });

  it('knows the products of the garden again, and draws no unchanged dose twice', () => {
    const known = new Set(garden.products);
    const wasKnown = new Set(plan.recommendations.flatMap(({ applications }) => applications.map((a) => a.product)));
    const used = held.places.flatMap((place) => place.plan?.applications ?? []);
    expect(used.filter(({ product }) => known.has(product)).length).toBe(
      plan.recommendations.flatMap((each) => each.applications).filter(({ product }) => known.has(product)).length,
    );
    expect(wasKnown.size).toBeGreaterThan(0);
    for (const [index, place] of held.places.entries()) {
      const before = quick.places[index]?.plan?.applications;
      if (JSON.stringify(doses([place])) === JSON.stringify([before?.map(({ mass }) => mass) ?? []]))
        expect(place.plan?.applications).toBe(before);
    }
  });

  it('has nothing to check where no dose is planned', () => {
    const none = planRecord(recordOf({ ...demo('rooftop-containers.yaml'), places: [] }), '2026-11-25');
    expect(none.held).toBe('yes');
  });
});

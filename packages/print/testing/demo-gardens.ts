import { readFileSync } from 'node:fs';
import { readGarden } from '@sorrel/engine/document';
import { type Garden, type GardenPlan, planGarden } from '@sorrel/engine/plan';
import { parse } from 'yaml';
import type { Handout } from '../src/index.ts';

export interface Planned {
  readonly garden: Garden;
  readonly plan: GardenPlan;
}

/** A demo garden with its plan, as the app would print it. */
export function planned(name: string): Planned {
  const file = new URL(`../../../demo/${name}.yaml`, import.meta.url);
  const { garden } = readGarden(parse(readFileSync(file, 'utf8')), { today: '2026-10-20' });
  return { garden, plan: planGarden(garden, { explain: true }) };
}

export const demoGardens = ['sour-ground-heavy-rain', 'limy-clay-hard-water', 'rooftop-containers'].map(planned);

/** Every place of the demo gardens as a handout. */
export const demoHandouts: readonly Handout[] = demoGardens.flatMap(({ garden, plan }) =>
  garden.places.flatMap((place, index): Handout[] => {
    const recommendation = plan.recommendations[index];
    return recommendation === undefined ? [] : [{ place, recommendation, garden: garden.name }];
  }),
);

/** The place of that name with its advice. @throws RangeError when no demo garden has it */
export function demoPlace(name: string): Handout {
  const found = demoHandouts.find(({ place }) => place.name === name);
  if (found === undefined) throw new RangeError(`No demo garden has a place called ${name}`);
  return found;
}

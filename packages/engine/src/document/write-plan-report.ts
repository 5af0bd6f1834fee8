import { en } from '@sorrel/almanac/words';
import type { Message } from '../derivation/message.ts';
import type { GardenPlan } from '../plan/plan-garden.ts';
import type { UnitSystem } from '../units/dimension.ts';
import { say } from '../units/say.ts';
import type { ReadGarden } from './read-garden.ts';

/**
 * A plan for machines, as `plan-report.ts` describes it: every number in SI, every message with its code and its sentence.
 *
 * @param read the garden as it was read, with what could not be used of it
 * @param system units the sentences are said in
 */
export function writePlanReport(read: ReadGarden, plan: GardenPlan, system: UnitSystem): Record<string, unknown> {
  return spoken(
    {
      garden: read.garden.name,
      asOf: read.garden.settings.today,
      settings: read.garden.settings,
      places: read.garden.places.map((place, index) => ({
        id: place.id,
        name: place.name,
        kind: place.kind,
        area: place.area,
        depth: place.depth,
        ...(place.volume === undefined ? {} : { volume: place.volume }),
        plants: place.plants.map((plant) => plant.name),
        plan: plan.recommendations[index],
      })),
      shopping: plan.shopping,
      problems: read.problems,
      leftOut: read.skipped,
      choices: read.choices,
    },
    system,
  ) as Record<string, unknown>;
}

const isMessage = (value: object): value is Message =>
  'code' in value && typeof value.code === 'string' && Object.hasOwn(en, value.code) && !('fix' in value);

function spoken(value: unknown, system: UnitSystem): unknown {
  if (Array.isArray(value)) return value.map((each) => spoken(each, system));
  if (typeof value !== 'object' || value === null) return value;
  if (isMessage(value)) return { ...value, text: say(value, system) };
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, spoken(each, system)]));
}

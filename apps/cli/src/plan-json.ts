import { en } from '@sorrel/almanac/words';
import type { Message } from '@sorrel/engine/derivation';
import type { ReadGarden } from '@sorrel/engine/document';
import type { GardenPlan } from '@sorrel/engine/plan';
import type { Speaker } from './speak.ts';

/** A plan for machines: every number in SI, every message with its code and its sentence. */
export function planJson(read: ReadGarden, plan: GardenPlan, speaker: Speaker): unknown {
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
    speaker,
  );
}

const isMessage = (value: object): value is Message =>
  'code' in value && typeof value.code === 'string' && Object.hasOwn(en, value.code) && !('fix' in value);

function spoken(value: unknown, speaker: Speaker): unknown {
  if (Array.isArray(value)) return value.map((each) => spoken(each, speaker));
  if (typeof value !== 'object' || value === null) return value;
  if (isMessage(value)) return { ...value, text: speaker.say(value) };
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, spoken(each, speaker)]));
}

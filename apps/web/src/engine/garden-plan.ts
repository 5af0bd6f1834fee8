import type { Problem } from '@sorrel/engine/derivation';
import { type Choice, type ReadGarden, readGarden } from '@sorrel/engine/document';
import { type Place, planGarden, type Recommendation, type ShoppingLine } from '@sorrel/engine/plan';
import type { GardenRecord } from '../data/garden-store.ts';

/** One place of the record with what the engine makes of it. */
export interface PlannedPlace {
  /** Id in the record. */
  readonly id: string;
  readonly name: string;
  readonly entry: GardenRecord['document']['places'][number];
  /** Undefined when something a dose rests on could not be read; then `problems` says what. */
  readonly place: Place | undefined;
  readonly plan: Recommendation | undefined;
  readonly problems: readonly Problem[];
  readonly choices: readonly Choice[];
}

export interface PlannedGarden {
  readonly read: ReadGarden;
  readonly places: readonly PlannedPlace[];
  readonly shopping: readonly ShoppingLine[];
}

/** Today by the reader's own calendar. */
export function today(): string {
  const now = new Date();
  const two = (part: number) => String(part).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/**
 * Reads and plans a garden, each figure with its working.
 *
 * @param day used where the garden says no day of its own
 */
export function planRecord(record: GardenRecord, day: string): PlannedGarden {
  const read = readGarden(record.document, { today: day });
  const { recommendations, shopping } = planGarden(read.garden, { explain: true });
  const placeById = new Map(read.garden.places.map((place) => [place.id, place]));
  const planById = new Map(recommendations.map((plan) => [plan.place, plan]));
  const places = record.document.places.map((entry, index): PlannedPlace => {
    // `readGarden` numbers the places of a document in its order.
    const id = `place-${index + 1}`;
    return {
      id: record.from.places[index]?.id ?? id,
      name: entry.name,
      entry,
      place: placeById.get(id),
      plan: planById.get(id),
      problems: read.problems.filter((problem) => problem.place === entry.name),
      choices: read.choices.filter((choice) => choice.place === entry.name),
    };
  });
  return { read, places, shopping };
}

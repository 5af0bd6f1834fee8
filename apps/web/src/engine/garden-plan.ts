import type { Problem } from '@sorrel/engine/derivation';
import { type Choice, type ReadGarden, readGarden } from '@sorrel/engine/document';
import { type GardenPlan, type Place, planGarden, type Recommendation, type ShoppingLine } from '@sorrel/engine/plan';
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
  /** The doses are not yet held to the forecast, which may make the first smaller. */
  readonly checking: boolean;
  readonly problems: readonly Problem[];
  readonly choices: readonly Choice[];
}

export interface PlannedGarden {
  readonly read: ReadGarden;
  readonly places: readonly PlannedPlace[];
  readonly shopping: readonly ShoppingLine[];
  /** How far the doses are held to the forecast: `failed` means that they never were. */
  readonly held: 'yes' | 'under way' | 'failed';
}

/** Today by the reader's own calendar. */
export function today(): string {
  const now = new Date();
  const two = (part: number) => String(part).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/**
 * Reads and plans a garden, each figure with its working. The doses are still to be held to the forecast, which takes
 * longer than a frame: `withHeld` puts in what the worker finds.
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
      checking: hasDose(planById.get(id)),
      problems: read.problems.filter((problem) => problem.place === entry.name),
      choices: read.choices.filter((choice) => choice.place === entry.name),
    };
  });
  return { read, places, shopping, held: places.some(({ checking }) => checking) ? 'under way' : 'yes' };
}

const hasDose = (plan: Recommendation | undefined) => plan !== undefined && plan.applications.length > 0;

/**
 * A planned garden with its doses held to the forecast.
 *
 * @param held plan of the same garden from the worker, where everything is a copy
 * @param copies the garden's products as the worker knows them, in their order
 */
export function withHeld(
  garden: PlannedGarden,
  held: GardenPlan,
  copies: PlannedGarden['read']['garden']['products'],
): PlannedGarden {
  // Screens ask whether a product is one of the garden's own, so each copy is turned back into what it is a copy of.
  const own = new Map(copies.map((copy, index) => [copy, garden.read.garden.products[index] ?? copy]));
  const owned = <T extends { readonly product: (typeof copies)[number] }>(line: T): T => ({
    ...line,
    product: own.get(line.product) ?? line.product,
  });
  const planById = new Map(held.recommendations.map((plan) => [plan.place, plan]));
  const places = garden.places.map((place): PlannedPlace => {
    const quick = place.plan;
    const plan = quick === undefined ? undefined : planById.get(quick.place);
    if (quick === undefined || plan === undefined || !place.checking) return { ...place, checking: false };
    const same =
      plan.applications.length === quick.applications.length &&
      plan.applications.every(({ mass }, index) => mass === quick.applications[index]?.mass);
    // Doses that stay are not drawn, nor foreseen, a second time.
    return {
      ...place,
      checking: false,
      plan: { ...plan, applications: same ? quick.applications : plan.applications.map(owned) },
    };
  });
  return { ...garden, places, shopping: held.shopping.map(owned), held: 'yes' };
}

/** A planned garden whose doses could not be held to the forecast. */
export const withoutHeld = (garden: PlannedGarden): PlannedGarden => ({
  ...garden,
  places: garden.places.map((place) => ({ ...place, checking: false })),
  held: 'failed',
});

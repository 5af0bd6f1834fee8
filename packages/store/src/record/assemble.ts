import { type GardenDocument, gardenDocument } from '@sorrel/engine/document';
import type { GardenRecord } from './record.ts';
import { thingsOfKind } from './record.ts';
import type { Thing, ThingOf } from './things.ts';

/** A garden document, and which thing of the record each of its parts came from, in the order of the document. */
export interface Assembled {
  readonly document: GardenDocument;
  readonly from: {
    readonly places: readonly {
      readonly id: string;
      readonly tests: readonly string[];
      readonly applications: readonly string[];
    }[];
    readonly materials: readonly string[];
  };
}

type PlaceEntry = GardenDocument['places'][number];
const headOrder = Object.keys(gardenDocument.shape);
const placeOrder = Object.keys(gardenDocument.shape.places.element.shape);

/**
 * Writes a record out as a garden document, quantities as they were typed. Readings stand among the tests; ticked-off
 * work with an amount stands among the applications; plants that have not come out join those of their place; the
 * newest water of a place (else of the garden) goes before what the place says itself. Feeds, observations and checks of meters have no
 * word in the garden document: find them with `things`.
 *
 * @returns undefined when the garden was removed or taken back
 */
export function assembleRecord(record: GardenRecord): Assembled | undefined {
  const things = record.standing();
  const garden = thingsOfKind(things, 'garden')[0];
  if (garden === undefined) return undefined;
  const inPlace = new Map<string, Thing[]>();
  for (const thing of things)
    if (thing.place !== undefined) inPlace.set(thing.place, [...(inPlace.get(thing.place) ?? []), thing]);
  const gardenWater = newest(thingsOfKind(things, 'water').filter((each) => each.place === undefined));

  const places = thingsOfKind(things, 'place').map((place) =>
    assemblePlace(place, inPlace.get(place.id) ?? [], gardenWater),
  );
  const materials = thingsOfKind(things, 'material');
  const document = {
    ...garden.content,
    places: places.map((each) => each.entry),
    ...(materials.length === 0 ? {} : { materials: materials.map((each) => each.content) }),
  };
  return {
    document: inOrder(document, headOrder),
    from: { places: places.map((each) => each.from), materials: materials.map((each) => each.id) },
  };
}

function assemblePlace(place: ThingOf<'place'>, things: readonly Thing[], gardenWater: ThingOf<'water'> | undefined) {
  const tests: PlaceEntry['tests'] = [];
  const applications: PlaceEntry['applications'] = [];
  const from = { id: place.id, tests: [] as string[], applications: [] as string[] };
  const plants = [...(place.content.plants ?? [])];
  for (const thing of things)
    if (thing.kind === 'test') {
      tests.push(thing.content);
      from.tests.push(thing.id);
    } else if (thing.kind === 'reading') {
      const { slurries: _slurries, meterCheck: _meterCheck, meter: _meter, ...test } = thing.content;
      tests.push(test);
      from.tests.push(thing.id);
    } else if (thing.kind === 'application') {
      applications.push(thing.content);
      from.applications.push(thing.id);
    } else if (thing.kind === 'task' && thing.content.used !== undefined) {
      const { date, used, note } = thing.content;
      applications.push({ date, ...used, ...(note === undefined ? {} : { note }) });
      from.applications.push(thing.id);
    } else if (thing.kind === 'planting' && thing.content.lifted === undefined) plants.push(thing.content.plant);
  const own = newest(things.filter((thing): thing is ThingOf<'water'> & Thing => thing.kind === 'water'));
  const watered = own ?? (place.content.water === undefined ? gardenWater : undefined);
  const entry: PlaceEntry = {
    ...place.content,
    ...(plants.length === 0 ? {} : { plants }),
    ...(watered === undefined ? {} : { water: waterOf(watered) }),
    ...(tests.length === 0 ? {} : { tests }),
    ...(applications.length === 0 ? {} : { applications }),
  };
  return { entry: inOrder(entry, placeOrder), from };
}

function waterOf({ content: { alkalinity, perYear } }: ThingOf<'water'>) {
  return perYear === undefined ? { alkalinity } : { alkalinity, perYear };
}

/** The one with the latest date; of several with one date, the one written last. */
function newest<T extends { readonly content: { readonly date: string } }>(things: readonly T[]): T | undefined {
  return things.reduce<T | undefined>(
    (best, each) => (best === undefined || each.content.date >= best.content.date ? each : best),
    undefined,
  );
}

/** The same fields in the order in which the garden document describes them, for people who read the file. */
function inOrder<T extends object>(value: T, order: readonly string[]): T {
  const sorted = Object.entries(value).sort(([a], [b]) => order.indexOf(a) - order.indexOf(b));
  return Object.fromEntries(sorted) as T;
}

import { findPlant } from '@sorrel/almanac/plants';
import type { Arrangement } from '@sorrel/engine/placing';
import { stands, type Thing } from '@sorrel/store/record';
import type { Entry } from '../../data/garden-store.ts';
import { correct } from '../../data/write.ts';
import type { PlannedPlace } from '../../engine/garden-plan.ts';
import { plantName, type WishDraft } from './draft.ts';

type PlantEntry = WishDraft['plant'];

interface Question {
  readonly arrangement: Arrangement;
  /** From 1. */
  readonly season: number;
  readonly planned: readonly PlannedPlace[];
  readonly wished: readonly PlantEntry[];
  readonly garden: string;
  readonly things: ReadonlyMap<string, Thing>;
  readonly today: string;
}

/** Name a plant goes by in an arrangement. */
const said = (plant: PlantEntry): string =>
  (typeof plant === 'string' ? findPlant(plant)?.name : undefined) ?? plantName(plant);

/**
 * Entries that write one season of an arrangement into the places. A place that gets nothing keeps what it has. Plants
 * keep the words and the pH ranges they were entered with; plantings of the record that are not part of it are lifted.
 *
 * @returns the entries, and how many places they change
 */
export function takingOver({ arrangement, season, planned, wished, garden, things, today }: Question): {
  readonly entries: readonly Entry[];
  readonly places: number;
} {
  const entries: Entry[] = [];
  let places = 0;
  for (const placed of arrangement.places) {
    const found = planned.find(({ place }) => place?.id === placed.place);
    const thing = found === undefined ? undefined : things.get(found.id);
    const names = [...new Set((placed.seasons[season - 1] ?? []).map(({ plant }) => plant))];
    if (found === undefined || thing?.kind !== 'place' || names.length === 0) continue;
    const known = [...(thing.content.plants ?? []), ...(found.entry.plants ?? []), ...wished];
    const planted = [...things.values()].filter(
      (each) =>
        each.kind === 'planting' &&
        each.place === found.id &&
        each.content.lifted === undefined &&
        stands(each, things),
    );
    const before = entries.length;
    const held = new Set<string>();
    for (const each of planted) {
      if (each.kind !== 'planting') continue;
      const name = said(each.content.plant);
      if (names.includes(name) && !held.has(name)) held.add(name);
      else entries.push(correct(garden, each.id, 'planting', { ...each.content, lifted: today }, found.id));
    }
    const plants = names
      .filter((name) => !held.has(name))
      .map((name) => known.find((plant) => said(plant) === name) ?? name);
    const now = (thing.content.plants ?? []).map(said);
    if (now.length !== plants.length || plants.some((plant) => !now.includes(said(plant)))) {
      const { plants: _before, ...kept } = thing.content;
      entries.push(correct(garden, found.id, 'place', plants.length === 0 ? kept : { ...kept, plants }));
    }
    if (entries.length > before) places += 1;
  }
  return { entries, places };
}

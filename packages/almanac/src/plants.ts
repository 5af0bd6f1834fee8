import { type Row, rows } from './generated/plants.ts';
import { formsOf, likeness, plainName, trigrams } from './plant-names.ts';

export type PlantRow = Row;
export type PlantGroup = Row['group'];

/** Every plant of the almanac. */
export const plants: readonly PlantRow[] = rows;

// Built on first use: most runs look up a handful of plants or none.
let keys: ReadonlyMap<string, PlantRow> | undefined;
let names: ReadonlyMap<string, PlantRow> | undefined;
let shapes: readonly { readonly plant: PlantRow; readonly parts: ReadonlySet<string> }[] | undefined;

/** The plant with that key, e.g. `blueberry-highbush`. */
export function plantByKey(key: string): PlantRow | undefined {
  keys ??= new Map(rows.map((row) => [row.key, row]));
  return keys.get(key);
}

/**
 * The plant a gardener means: by key, common name, another name, or botanical name; singular or plural, capitals
 * or not, `Blueberry, highbush` or `highbush blueberry`.
 *
 * @returns `undefined` when no name fits exactly; then ask with `nearestPlants`
 */
export function findPlant(text: string): PlantRow | undefined {
  names ??= nameIndex();
  return plantByKey(text.trim().toLowerCase()) ?? names.get(plainName(text));
}

/**
 * Plants whose names look most like what was typed, best first, for "did you mean".
 *
 * @param n how many at most
 */
export function nearestPlants(text: string, n = 3): PlantRow[] {
  const wanted = trigrams(plainName(text));
  shapes ??= rows.flatMap((plant) =>
    [...new Set([...formsOf(plant.name), ...plant.also.map(plainName)])].map((form) => ({
      plant,
      parts: trigrams(form),
    })),
  );
  const best = new Map<PlantRow, number>();
  for (const { plant, parts } of shapes) {
    const score = likeness(wanted, parts);
    if (score >= LEAST_LIKENESS && score > (best.get(plant) ?? 0)) best.set(plant, score);
  }
  return [...best]
    .sort((a, b) => b[1] - a[1] || a[0].key.localeCompare(b[0].key))
    .slice(0, n)
    .map(([plant]) => plant);
}

/** Below this the names share hardly more than chance letters. */
const LEAST_LIKENESS = 0.3;

/** A printed name outranks another plant's second name, and the first of two equal names stays. */
function nameIndex(): Map<string, PlantRow> {
  const index = new Map<string, PlantRow>();
  const add = (form: string, row: PlantRow): void => {
    if (form !== '' && !index.has(form)) index.set(form, row);
  };
  for (const row of rows) add(plainName(row.name), row);
  for (const row of rows) for (const form of row.also) add(plainName(form), row);
  for (const row of rows) for (const form of formsOf(row.name)) add(form, row);
  for (const row of rows) for (const form of formsOf(row.botanical)) add(form, row);
  return index;
}

import { type Row, rows } from './generated/plants.ts';
import { formsOf, likeness, plainName, trigrams } from './plant-names.ts';

export type PlantRow = Row;
export type PlantGroup = Row['group'];

/** Every plant of the almanac. */
export const plants: readonly PlantRow[] = rows;

// Built on first use: most runs look up a handful of plants or none.
let keys: ReadonlyMap<string, PlantRow> | undefined;
let written: readonly string[] | undefined;
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
  const known = found.get(text);
  if (known !== undefined) return known;
  const plant = search(text);
  if (plant !== undefined) found.set(text, plant);
  return plant;
}

/** Names already looked up, so that a table of a hundred thousand rows searches each name once; bounded by the ways to write the names we know. */
const found = new Map<string, PlantRow>();

function search(text: string): PlantRow | undefined {
  const exact = plantByKey(text.trim().toLowerCase());
  const wanted = plainName(text);
  if (exact !== undefined || wanted === '') return exact;
  // Working out every form of every name takes longer than a program should take to start, so a few letters of the
  // longest word sort out most plants first.
  written ??= rows.map((row) => [row.name, row.botanical, ...row.also].join(' ').toLowerCase());
  const word = wanted.split(' ').reduce((longest, next) => (next.length > longest.length ? next : longest));
  const hint = word.slice(0, Math.max(1, Math.min(3, word.length - 1)));
  const candidates = rows.filter((_, index) => written?.[index]?.includes(hint));
  for (const namesOf of NAMES) {
    const found = candidates.find((row) => namesOf(row).includes(wanted));
    if (found !== undefined) return found;
  }
  return undefined;
}

/** Kinds of name, the surest first: a printed name outranks another plant's second name. */
const NAMES: readonly ((row: PlantRow) => readonly string[])[] = [
  (row) => [plainName(row.name)],
  (row) => row.also.map(plainName),
  (row) => formsOf(row.name),
  (row) => formsOf(row.botanical),
];

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

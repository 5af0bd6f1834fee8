import {
  findHalfKnownPlant,
  type HalfKnownPlantRow,
  halfKnownPlants,
  nearestHalfKnownPlants,
} from '@sorrel/almanac/half-known-plants';
import { findPlant, nearestPlants, type PlantRow, plants } from '@sorrel/almanac/plants';

export type AnyPlant = PlantRow | HalfKnownPlantRow;
export const isHalfKnown = (plant: AnyPlant): plant is HalfKnownPlantRow => !('aim' in plant);

const plain = (text: string): string =>
  text
    .normalize('NFD')
    .replace(/[\u0300-\u036f]/g, '')
    .toLowerCase();

interface Written<P> {
  readonly plant: P;
  readonly names: readonly string[];
}
const written = <P extends AnyPlant>(rows: readonly P[]): readonly Written<P>[] =>
  rows.map((plant) => ({ plant, names: [plant.name, ...plant.also, plant.botanical].map(plain) }));

let known: readonly Written<PlantRow>[] | undefined;
let half: readonly Written<HalfKnownPlantRow>[] | undefined;

/** Which plants are looked through: those with a best range in the ground, also those with one for pots, or all. */
export type Among = 'ground' | 'pots' | 'all';

/**
 * Plants for what has been typed so far, best first: the exact one, names that begin so, words that begin so, names
 * that hold it, and at last those that look alike.
 */
export function searchPlants(typed: string, most = 12, among: Among = 'ground'): readonly AnyPlant[] {
  const wanted = plain(typed.trim());
  if (wanted === '') return [];
  known ??= written(plants);
  half ??= written(halfKnownPlants);
  const also =
    among === 'ground' ? [] : among === 'all' ? half : half.filter(({ plant }) => plant.containerLow !== undefined);
  const ranked = [...known, ...also].flatMap(({ plant, names }) => {
    const rank = Math.min(...names.map((name) => rankOf(name, wanted)));
    return rank === Infinity ? [] : [{ plant, rank }];
  });
  ranked.sort((a, b) => a.rank - b.rank || a.plant.name.localeCompare(b.plant.name));
  const exact = findPlant(typed) ?? (among === 'all' ? findHalfKnownPlant(typed) : undefined);
  const found = [...new Set([...(exact === undefined ? [] : [exact]), ...ranked.map(({ plant }) => plant)])];
  if (found.length > 0) return found.slice(0, most);
  return looksLike(typed, among);
}

/** Plants whose names look like what was typed. */
export function looksLike(typed: string, among: Among = 'ground'): readonly AnyPlant[] {
  return among === 'all' ? [...nearestPlants(typed, 4), ...nearestHalfKnownPlants(typed, 2)] : nearestPlants(typed, 5);
}

function rankOf(name: string, wanted: string): number {
  if (name.startsWith(wanted)) return 1;
  if (name.split(/[^a-z0-9]+/).some((word) => word.startsWith(wanted))) return 2;
  return wanted.length >= 3 && name.includes(wanted) ? 3 : Infinity;
}

import { findPlant, nearestPlants, type PlantRow, plants } from '@sorrel/almanac/plants';

const plain = (text: string): string =>
  text
    .normalize('NFD')
    .replace(/[\u0300-\u036f]/g, '')
    .toLowerCase();

let texts: readonly { readonly plant: PlantRow; readonly names: readonly string[] }[] | undefined;

/**
 * Plants for what has been typed so far, best first: the exact one, names that begin so, words that begin so, names
 * that hold it, and at last those that look alike.
 */
export function searchPlants(typed: string, most = 12): readonly PlantRow[] {
  const wanted = plain(typed.trim());
  if (wanted === '') return [];
  texts ??= plants.map((plant) => ({ plant, names: [plant.name, ...plant.also, plant.botanical].map(plain) }));
  const ranked = texts.flatMap(({ plant, names }) => {
    const rank = Math.min(...names.map((name) => rankOf(name, wanted)));
    return rank === Infinity ? [] : [{ plant, rank }];
  });
  ranked.sort((a, b) => a.rank - b.rank || a.plant.name.localeCompare(b.plant.name));
  const exact = findPlant(typed);
  const found = [...new Set([...(exact === undefined ? [] : [exact]), ...ranked.map(({ plant }) => plant)])];
  return found.length > 0 ? found.slice(0, most) : nearestPlants(typed, 5);
}

function rankOf(name: string, wanted: string): number {
  if (name.startsWith(wanted)) return 1;
  if (name.split(/[^a-z0-9]+/).some((word) => word.startsWith(wanted))) return 2;
  return wanted.length >= 3 && name.includes(wanted) ? 3 : Infinity;
}

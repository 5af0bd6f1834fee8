import { findAnyPlant } from '@sorrel/almanac/half-known-plants';
import { type RotationRow, rotations } from '@sorrel/almanac/rotations';
import { findDisease } from '../nutrients/diseases.ts';
import type { PlantRange } from '../plan/place.ts';

/**
 * Family a plant is rotated with. A plant of unknown family is rotated with itself only.
 *
 * @source families: almanac `plants`
 */
export const familyOf = (plant: Pick<PlantRange, 'key' | 'name'>): string =>
  (findAnyPlant(plant.key) ?? findAnyPlant(plant.name))?.family ?? plant.key;

/**
 * The rule for a family in a place: the longest interval among its rows that hold there, else the general one.
 *
 * @param diseases present in the place, by key or name
 * @source almanac `rotations`, where a span of years counts with its longer end
 */
export function rotationFor(family: string, diseases: readonly string[] = []): RotationRow {
  const present = diseases.map((text) => findDisease(text)?.key);
  let best: RotationRow | undefined;
  for (const row of rotations)
    if (row.family === family && (row.when === undefined || present.includes(row.when)))
      if (best === undefined || row.years > best.years) best = row;
  best ??= rotations.find((row) => row.family === 'any');
  if (best === undefined) throw new RangeError('the almanac has no general rotation');
  return best;
}

const STAYING: ReadonlySet<string> = new Set([
  'small fruit',
  'shrub',
  'tree',
  'tree fruit',
  'vine',
  'perennial flower',
  'lawn',
]);
/** Vegetables and herbs that stand for years (common practice, no source). */
const STAYING_KEYS: ReadonlySet<string> = new Set([
  'artichoke-globe',
  'asparagus',
  'chives',
  'garlic-chives',
  'horseradish',
  'jerusalem-artichoke',
  'lavender',
  'mint',
  'oregano',
  'rhubarb',
  'rosemary',
  'sage',
  'thyme',
]);

/** Whether a plant stays where it is planted: by its group in the almanac, or a list of long-lived vegetables and herbs. */
export function stays(plant: Pick<PlantRange, 'key' | 'name'>): boolean {
  const row = findAnyPlant(plant.key) ?? findAnyPlant(plant.name);
  return row !== undefined && (STAYING.has(row.group) || STAYING_KEYS.has(row.key));
}

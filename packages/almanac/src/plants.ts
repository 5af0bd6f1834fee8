import { type Row, rows } from './generated/plants.ts';
import { nameIndex } from './name-index.ts';

export type PlantRow = Row;
export type PlantGroup = Row['group'];

/** Every plant of the almanac that has a best range in the ground; `half-known-plants` has the others. */
export const plants: readonly PlantRow[] = rows;

const index = nameIndex(rows);

/** The plant with that key, e.g. `blueberry-highbush`. */
export const plantByKey = (key: string): PlantRow | undefined => index.byKey(key);

/**
 * The plant a gardener means: by key, common name, another name, or botanical name; singular or plural, capitals
 * or not, `Blueberry, highbush` or `highbush blueberry`.
 *
 * @returns `undefined` when no name fits exactly; then ask with `nearestPlants`
 */
export const findPlant = (text: string): PlantRow | undefined => index.find(text);

/**
 * Plants whose names look most like what was typed, best first, for "did you mean".
 *
 * @param n how many at most
 */
export const nearestPlants = (text: string, n = 3): PlantRow[] => index.nearest(text, n).map(({ plant }) => plant);

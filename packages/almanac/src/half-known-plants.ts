import { type Row, rows } from './generated/half-known-plants.ts';
import { nameIndex } from './name-index.ts';
import { findPlant, type PlantRow } from './plants.ts';

export type HalfKnownPlantRow = Row;

/** Plants without a published best range in the ground. */
export const halfKnownPlants: readonly HalfKnownPlantRow[] = rows;

const index = nameIndex(rows);

/** The half-known plant a gardener means, by the same names as `findPlant` takes. */
export const findHalfKnownPlant = (text: string): HalfKnownPlantRow | undefined => index.find(text);

/** Any plant of the almanac: one with a best range, else a half-known one. Both have a name, a family and a group. */
export const findAnyPlant = (text: string): PlantRow | HalfKnownPlantRow | undefined =>
  findPlant(text) ?? findHalfKnownPlant(text);

/** Half-known plants whose names look most like what was typed, best first. */
export const nearestHalfKnownPlants = (text: string, n = 3): HalfKnownPlantRow[] =>
  index.nearest(text, n).map(({ plant }) => plant);

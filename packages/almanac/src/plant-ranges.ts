import { type Row, rows } from './generated/plant-ranges.ts';
import { findAnyPlant } from './half-known-plants.ts';

export type PlantRangeRow = Row;
/** Every plant as every publication gives it, one of each a row. */
export const plantRanges: readonly PlantRangeRow[] = rows;

/**
 * What one publication says of one plant.
 *
 * @param name common name as printed in the table, regardless of capitals
 * @param source citation key
 * @param medium pots, soil in water or soil in KCl; never comparable with each other
 */
export function publishedRange(
  name: string,
  source: string,
  medium: PlantRangeRow['medium'] = 'soil',
): PlantRangeRow | undefined {
  const wanted = name.toLowerCase();
  return rows.find((row) => row.medium === medium && row.sources.includes(source) && row.name.toLowerCase() === wanted);
}

let byPlant: ReadonlyMap<string, readonly PlantRangeRow[]> | undefined;

/** Everything the publications say of one plant, pots, ground and ground read in KCl apart, in the order of the table. */
export function rangesOf(key: string): readonly PlantRangeRow[] {
  byPlant ??= grouped();
  return byPlant.get(key) ?? [];
}

function grouped(): ReadonlyMap<string, readonly PlantRangeRow[]> {
  const groups = new Map<string, PlantRangeRow[]>();
  for (const row of rows) {
    const plant = findAnyPlant(row.name) ?? findAnyPlant(row.botanical);
    if (plant === undefined) continue;
    const group = groups.get(plant.key);
    if (group === undefined) groups.set(plant.key, [row]);
    else group.push(row);
  }
  return groups;
}

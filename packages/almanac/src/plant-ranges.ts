import { type Row, rows } from './generated/plant-ranges.ts';

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

import { type Row, rows } from './generated/nutrient-levels.ts';

export type NutrientLevelRow = Row;
/** Published classes of nutrient levels, by extractant. */
export const nutrientLevels: readonly NutrientLevelRow[] = rows;

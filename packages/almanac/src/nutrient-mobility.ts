import { type Row, rows } from './generated/nutrient-mobility.ts';

export type NutrientMobilityRow = Row;
/** Which leaves show a lack first. */
export const nutrientMobility: readonly NutrientMobilityRow[] = rows;

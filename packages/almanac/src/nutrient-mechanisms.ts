import { type Row, rows } from './generated/nutrient-mechanisms.ts';

export type NutrientMechanismRow = Row;
/** Why nutrients follow the pH. */
export const nutrientMechanisms: readonly NutrientMechanismRow[] = rows;

import { type Row, rows } from './generated/indicator-plants.ts';

export type IndicatorPlantRow = Row;
/** Weeds that are said to tell the pH. */
export const indicatorPlants: readonly IndicatorPlantRow[] = rows;

import { type Row, rows } from './generated/water-alkalinity.ts';

export type WaterAlkalinityRow = Row;
/** Bands and limits for the alkalinity of irrigation water. */
export const waterAlkalinity: readonly WaterAlkalinityRow[] = rows;

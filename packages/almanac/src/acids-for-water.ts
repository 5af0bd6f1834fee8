import { type Row, rows } from './generated/acids-for-water.ts';

export type WaterAcidRow = Row;
/** Acids used on irrigation water, with their strength. */
export const acidsForWater: readonly WaterAcidRow[] = rows;

const byKey = new Map(rows.map((row) => [row.key, row]));
export const waterAcidOf = (key: string): WaterAcidRow | undefined => byKey.get(key);

import { type Row, rows } from './generated/materials.ts';

export type MaterialRow = Row;
/** Liming, acidifying, neutral and organic materials and fertilizers, one row each. */
export const materials: readonly MaterialRow[] = rows;

const byKey = new Map(rows.map((row) => [row.key, row]));
export const materialOf = (key: string): MaterialRow | undefined => byKey.get(key);

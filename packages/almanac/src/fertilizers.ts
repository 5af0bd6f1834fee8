import { type Row, rows } from './generated/fertilizers.ts';

export type FertilizerRow = Row;
/** Published acidity or basicity of fertilizers. */
export const fertilizers: readonly FertilizerRow[] = rows;

const byKey = new Map(rows.map((row) => [row.key, row]));
export const fertilizerOf = (key: string): FertilizerRow | undefined => byKey.get(key);

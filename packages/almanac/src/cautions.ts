import { type Row, rows } from './generated/cautions.ts';

export type CautionRow = Row;
/** Cautions that travel with materials; the sentence is in the words, under `message`. */
export const cautions: readonly CautionRow[] = rows;

const byCode = new Map(rows.map((row) => [row.code, row]));
export const cautionOf = (code: string): CautionRow | undefined => byCode.get(code);

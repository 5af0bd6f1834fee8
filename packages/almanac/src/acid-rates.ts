import { type Row, rows } from './generated/acid-rates.ts';

export type AcidRateRow = Row;
export const acidRates: readonly AcidRateRow[] = rows;

import { type Row, rows } from './generated/uk-factors.ts';

export type UkFactorRow = Row;
/** United Kingdom lime factors by soil group and use. */
export const ukFactors: readonly UkFactorRow[] = rows;

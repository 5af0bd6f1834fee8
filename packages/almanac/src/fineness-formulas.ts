import { type Row, rows } from './generated/fineness-formulas.ts';

export type FinenessFormulaRow = Row;
/** Published formula of each fineness system. */
export const finenessFormulas: readonly FinenessFormulaRow[] = rows;

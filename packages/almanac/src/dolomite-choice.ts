import { type Row, rows } from './generated/dolomite-choice.ts';

export type DolomiteChoiceRow = Row;
/** Published rules for choosing dolomitic or calcitic lime. */
export const dolomiteChoice: readonly DolomiteChoiceRow[] = rows;

import { type Row, rows } from './generated/uk-targets.ts';

export type UkTargetRow = Row;
/** United Kingdom optimum and target pH by cropping system. */
export const ukTargets: readonly UkTargetRow[] = rows;

import { type Row, rows } from './generated/season-shift.ts';

export type SeasonShiftRow = Row;

/** How far water pH in autumn lies below spring. */
export const seasonShift: readonly SeasonShiftRow[] = rows;

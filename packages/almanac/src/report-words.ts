import { type Row, rows } from './generated/report-words.ts';

export type ReportWord = Row;

/** Words in cells and headers of laboratories' tables. */
export const reportWords: readonly ReportWord[] = rows;

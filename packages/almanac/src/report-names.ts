import { type Row, rows } from './generated/report-names.ts';

export type ReportName = Row;

/** Names that laboratories give to columns. */
export const reportNames: readonly ReportName[] = rows;

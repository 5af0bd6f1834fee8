import { type Row, rows } from './generated/report-columns.ts';

export type ReportColumn = Row;
export type Quantity = Row['quantity'];

/** What a column of a laboratory's table can mean. */
export const reportColumns: readonly ReportColumn[] = rows;

/** The same by meaning. */
export const reportColumn: ReadonlyMap<string, ReportColumn> = new Map(rows.map((row) => [row.meaning, row]));

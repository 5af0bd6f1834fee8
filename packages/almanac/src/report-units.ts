import { type Row, rows } from './generated/report-units.ts';

export type ReportUnit = Row;

/** Units of laboratories' tables, by what is measured. */
export const reportUnits: readonly ReportUnit[] = rows;

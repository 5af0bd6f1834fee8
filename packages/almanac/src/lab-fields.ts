import { type Row, rows } from './generated/lab-fields.ts';

export type LabFieldsRow = Row;

/** Fields of laboratory reports, with their other names. */
export const labFields: readonly LabFieldsRow[] = rows;

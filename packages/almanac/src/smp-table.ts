import { type Row, rows } from './generated/smp-table.ts';

export type SmpTableRow = Row;
/** Lime rates by SMP buffer pH, one row a cell. */
export const smpTableRows: readonly SmpTableRow[] = rows;

import { type Row, rows } from './generated/garden-tables.ts';

export type GardenTableRow = Row;
/** Garden lime charts: last resort and cross-check. */
export const gardenTableRows: readonly GardenTableRow[] = rows;

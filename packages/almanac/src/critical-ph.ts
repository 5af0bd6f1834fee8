import { type Row, rows } from './generated/critical-ph.ts';

export type CriticalPhRow = Row;
/** pH below which crops may suffer on mineral soil, from memory. */
export const criticalPhs: readonly CriticalPhRow[] = rows;

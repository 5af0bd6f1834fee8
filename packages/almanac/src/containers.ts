import { type Row, rows } from './generated/containers.ts';

export type ContainersRow = Row;

/** Published figures for containers: lime, acid, start and target pH, alkalinity, monitoring. */
export const containers: readonly ContainersRow[] = rows;

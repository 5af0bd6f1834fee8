import { type Row, rows } from './generated/sampling.ts';

export type SamplingRow = Row;

/** Published sampling depth (m) and number of cores. */
export const sampling: readonly SamplingRow[] = rows;

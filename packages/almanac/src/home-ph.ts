import { type Row, rows } from './generated/home-ph.ts';

export type HomePhRow = Row;

/** Steps of a home slurry test. */
export const homePh: readonly HomePhRow[] = rows;

import { type Row, rows } from './generated/sample-spoilers.ts';

export type SampleSpoilerRow = Row;

/** What spoils a soil sample, and how. */
export const sampleSpoilers: readonly SampleSpoilerRow[] = rows;

import { type Row, rows } from './generated/reference-solutions.ts';

export type ReferenceSolutionRow = Row;
/** Everyday things with their pH. */
export const referenceSolutions: readonly ReferenceSolutionRow[] = rows;

import { type Row, rows } from './generated/sieves.ts';

export type SieveRow = Row;
/** US sieve numbers and their openings, current and as older tables print them. */
export const sieves: readonly SieveRow[] = rows;

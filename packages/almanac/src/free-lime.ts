import { type Row, rows } from './generated/free-lime.ts';

export type FreeLimeRow = Row;

/** What can be done with a limy soil, by % CaCO3. */
export const freeLime: readonly FreeLimeRow[] = rows;

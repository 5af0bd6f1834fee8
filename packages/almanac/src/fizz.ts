import { type Row, rows } from './generated/fizz.ts';

export type FizzRow = Row;

/** Carbonate by fizz, % CaCO3: the published range, and the range and best guess used here. */
export const fizz: readonly FizzRow[] = rows;

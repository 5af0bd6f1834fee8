import { type Row, rows } from './generated/incompatible-mixes.ts';

export type IncompatibleMixRow = Row;
/** Materials that must not be mixed or follow each other closely. */
export const incompatibleMixes: readonly IncompatibleMixRow[] = rows;

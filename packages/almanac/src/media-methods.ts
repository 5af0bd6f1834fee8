import { type Row, rows } from './generated/media-methods.ts';

export type MediaMethodsRow = Row;

/** Ways of testing a potting medium. */
export const mediaMethods: readonly MediaMethodsRow[] = rows;

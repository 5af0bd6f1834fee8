import { type Row, rows } from './generated/media-ec.ts';

export type MediaEcRow = Row;

/** Bands of electrical conductivity of potting media by method; upper bounds belong to the band. */
export const mediaEc: readonly MediaEcRow[] = rows;

import { type Row, rows } from './generated/media-start-ph.ts';

export type MediaStartPhRow = Row;

/** pH of unlimed ingredients of potting media and usual lime, kg/m3. */
export const mediaStartPh: readonly MediaStartPhRow[] = rows;

import { type Row, rows } from './generated/peat-lime-compost.ts';

export type PeatLimeCompostRow = Row;

/** pH of peat with lime (kg/m3) and a share of compost by volume. */
export const peatLimeCompost: readonly PeatLimeCompostRow[] = rows;

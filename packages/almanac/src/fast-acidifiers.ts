import { type Row, rows } from './generated/fast-acidifiers.ts';

export type FastAcidifierRow = Row;
/** What takes the place of sulfur, by formula and as published. */
export const fastAcidifiers: readonly FastAcidifierRow[] = rows;

import { type Row, rows } from './generated/hazards.ts';

export type HazardRow = Row;
/** What can go wrong with each material, and the rule that prevents it. */
export const hazards: readonly HazardRow[] = rows;

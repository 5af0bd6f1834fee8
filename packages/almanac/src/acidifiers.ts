import { type Row, rows } from './generated/acidifiers.ts';

export type AcidifierRow = Row;
/** Acid of pure compounds, derived from their formulas. */
export const acidifiers: readonly AcidifierRow[] = rows;

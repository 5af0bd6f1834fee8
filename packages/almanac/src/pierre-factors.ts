import { type Row, rows } from './generated/pierre-factors.ts';

export type PierreFactorRow = Row;
/** Acid or base that each element of a fertilizer leaves in the soil. */
export const pierreFactors: readonly PierreFactorRow[] = rows;

export type PierreElement = PierreFactorRow['element'];

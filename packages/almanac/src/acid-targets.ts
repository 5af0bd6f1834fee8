import { type Row, rows } from './generated/acid-targets.ts';

export type AcidTargetRow = Row;
/** Target pH of acid-loving crops, one publication a row. */
export const acidTargets: readonly AcidTargetRow[] = rows;

import { type Row, rows } from './generated/pot-flags.ts';

export type PotFlagRow = Row;
/** Pot crops that show iron trouble. */
export const potFlags: readonly PotFlagRow[] = rows;

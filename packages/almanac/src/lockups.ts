import { type Row, rows } from './generated/lockups.ts';

export type LockupRow = Row;
/** pH limits beyond which nutrients are locked up. */
export const lockups: readonly LockupRow[] = rows;

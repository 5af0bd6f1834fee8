import { type Row, rows } from './generated/rotations.ts';

export type RotationRow = Row;
/** How long a family stays away from a place where it grew. */
export const rotations: readonly RotationRow[] = rows;

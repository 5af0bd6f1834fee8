import { type Row, rows } from './generated/lime-dissolution.ts';

export type LimeDissolutionRow = Row;
export const limeDissolution: readonly LimeDissolutionRow[] = rows;

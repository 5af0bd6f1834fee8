import { type Row, rows } from './generated/ph-classes.ts';

export type PhClassRow = Row;
/** Names of soil reaction, sour to limy. */
export const phClasses: readonly PhClassRow[] = rows;

import { type Row, rows } from './generated/free-ions.ts';

export type FreeIonRow = Row;
/** Free ions over their minerals. */
export const freeIons: readonly FreeIonRow[] = rows;

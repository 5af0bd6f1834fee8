import { type Row, rows } from './generated/nsw-ecec.ts';

export type NswEcecRow = Row;
/** New South Wales lime rates by effective CEC and pH in CaCl2. */
export const nswEcecTable: readonly NswEcecRow[] = rows;

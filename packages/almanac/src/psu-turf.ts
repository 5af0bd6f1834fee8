import { type Row, rows } from './generated/psu-turf.ts';

export type PsuTurfRow = Row;
/** Pennsylvania turf lime rates by exchangeable acidity and target. */
export const psuTurfTable: readonly PsuTurfRow[] = rows;

import { type Row, rows } from './generated/sulfur-rates.ts';

export type SulfurRateRow = Row;
/** Published rates of elemental sulfur, value and unit as printed. */
export const sulfurRates: readonly SulfurRateRow[] = rows;

import { type Row, rows } from './generated/ph-conversions.ts';

export type PhConversionRow = Row;

/** Published equations between ways of reading pH: `intercept + slope x + per_ec EC + per_om OM` (or log10 x); EC in dS/m, OM in %. */
export const phConversions: readonly PhConversionRow[] = rows;

const byKey = new Map(rows.map((row) => [row.id, row]));

/** The row of one id; a wrong key is a programmer's error. */
export function phConversion(key: string): PhConversionRow {
  const row = byKey.get(key);
  if (row === undefined) throw new RangeError(`no row ${key} in ph-conversions`);
  return row;
}

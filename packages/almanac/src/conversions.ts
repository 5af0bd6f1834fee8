import { type Row, rows } from './generated/conversions.ts';

export type ConversionRow = Row;
export const conversions: readonly ConversionRow[] = rows;

const byPair = new Map(rows.map((row) => [`${row.from}>${row.to}`, row]));

/** The published row for one pair of units, as both are written in the table; undefined when there is none. */
export const conversionRow = (from: string, to: string): ConversionRow | undefined => byPair.get(`${from}>${to}`);

/**
 * The published factor for one pair of units: a value in `from` times it is the value in `to`.
 *
 * @throws RangeError when the table has no such row
 */
export function conversion(from: string, to: string): number {
  const row = conversionRow(from, to);
  if (row === undefined) throw new RangeError(`The conversions table has no row from ${from} to ${to}`);
  return row.multiply_by;
}

import { type Row, rows } from './generated/curve-parameters.ts';

export type CurveParameterRow = Row;

/** Shape of the buffer curve, its default height, and limits around it. */
export const curveParameters: readonly CurveParameterRow[] = rows;

const byKey = new Map(rows.map((row) => [row.key, row]));

/** The row of one key; a wrong key is a programmer's error. */
export function curveParameter(key: string): CurveParameterRow {
  const row = byKey.get(key);
  if (row === undefined) throw new RangeError(`no row ${key} in curve-parameters`);
  return row;
}

import { type Row, rows } from './generated/test-errors.ts';

export type TestErrorRow = Row;

/** Standard deviation of one pH reading by instrument, of one core, and of a year without a test. `cores` is assumed when none are stated. */
export const testErrors: readonly TestErrorRow[] = rows;

const byKey = new Map(rows.map((row) => [row.key, row]));

/** The row of one key; a wrong key is a programmer's error. */
export function testError(key: string): TestErrorRow {
  const row = byKey.get(key);
  if (row === undefined) throw new RangeError(`no row ${key} in test-errors`);
  return row;
}

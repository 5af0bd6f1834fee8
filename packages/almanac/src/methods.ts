import { type Row, rows } from './generated/methods.ts';

export type MethodRow = Row;
/** Published lime requirement methods: where, how deep, on what soil mass, with what allowance. */
export const methodRows: readonly MethodRow[] = rows;

const byId = new Map(rows.map((row) => [row.id, row]));

/** @throws RangeError when no method has the id. */
export function methodRow(id: string): MethodRow {
  const row = byId.get(id);
  if (row === undefined) throw new RangeError(`no method ${id} in the almanac`);
  return row;
}

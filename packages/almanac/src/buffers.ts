import { type Row, rows } from './generated/buffers.ts';

export type BufferRow = Row;

/** Lime-requirement buffers: pH before soil is added, and the lowest reading that makes sense. */
export const buffers: readonly BufferRow[] = rows;

const byKey = new Map(rows.map((row) => [row.method, row]));

/** The row of one method; a wrong key is a programmer's error. */
export function bufferOf(key: string): BufferRow {
  const row = byKey.get(key);
  if (row === undefined) throw new RangeError(`no row ${key} in buffers`);
  return row;
}

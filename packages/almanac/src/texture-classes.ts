import { type Row, rows } from './generated/texture-classes.ts';

export type TextureClassRow = Row;

/** A representative soil for each USDA class, %; organic carbon in %. */
export const textureClasses: readonly TextureClassRow[] = rows;

const byKey = new Map(rows.map((row) => [row.class, row]));

/** The row of one class; a wrong key is a programmer's error. */
export function textureClassOf(key: string): TextureClassRow {
  const row = byKey.get(key);
  if (row === undefined) throw new RangeError(`no row ${key} in texture-classes`);
  return row;
}

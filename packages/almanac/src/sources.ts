import { type Row, rows } from './generated/sources.ts';

export type SourceRow = Row;
export const sources: readonly SourceRow[] = rows;

const byKey = new Map(rows.map((row) => [row.key, row]));

/** Citation as printed under a figure: title, institution, year, address; an unknown key is said to be unknown. */
export function cite(key: string): string {
  const row = byKey.get(key);
  if (row === undefined) return `${key} (unknown source)`;
  return [row.title, row.institution, row.year, row.address].filter((part) => part !== undefined).join('. ');
}

export const isSource = (key: string): boolean => byKey.has(key);

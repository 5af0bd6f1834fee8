import { type Row, rows } from './generated/acidifying-limits.ts';

export type AcidifyingLimitRow = Row;
/** The most sulfur or sulfate that may be given at once or in a year. */
export const acidifyingLimits: readonly AcidifyingLimitRow[] = rows;

/** The limit with that key; an unknown key is a programmer's error. */
export function acidifyingLimit(key: string): AcidifyingLimitRow {
  const row = rows.find((candidate) => candidate.key === key);
  if (row === undefined) throw new RangeError(`no acidifying limit is called ${key}`);
  return row;
}

import { type Row, rows } from './generated/assumed-sieves.ts';

export type AssumedSieveRow = Row;
export const assumedSieves: readonly AssumedSieveRow[] = rows;

/** Sieve curve of a grade, opening in metres; an unknown grade is a programmer's error (RangeError). */
export function grade(name: string): readonly { readonly opening: number; readonly passing: number }[] {
  const found = rows.filter((row) => row.grade === name);
  if (found.length === 0) throw new RangeError(`assumed-sieves has no grade ${name}`);
  return found.map((row) => ({ opening: row.opening_mm / 1000, passing: row.passing }));
}

import { type Row, rows } from './generated/fineness-systems.ts';

export type FinenessClassRow = Row;
/** Size classes and factors of every published fineness system, one row a class. */
export const finenessSystems: readonly FinenessClassRow[] = rows;

const bySystem = new Map<string, FinenessClassRow[]>();
for (const row of rows) {
  const classes = bySystem.get(row.system);
  if (classes === undefined) bySystem.set(row.system, [row]);
  else classes.push(row);
}

/** Rows of one system, coarse to fine; empty when the system is unknown. */
export const finenessClasses = (system: string): readonly FinenessClassRow[] => bySystem.get(system) ?? [];

/** Every system named, with whether all its factors are known. */
export const finenessSystemNames: readonly {
  readonly system: string;
  readonly title: string;
  readonly state: FinenessClassRow['state'];
}[] = [...bySystem].map(([system, [first]]) => ({
  system,
  title: first?.title ?? system,
  state: first?.state ?? 'not computed',
}));

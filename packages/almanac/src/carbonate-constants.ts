import { type Row, rows } from './generated/carbonate-constants.ts';

export type CarbonateConstantRow = Row;
export const carbonateConstants: readonly CarbonateConstantRow[] = rows;

const byName = new Map(rows.map((row) => [row.constant, row]));

/** Equilibrium constant of the carbonate system by name. */
export function carbonateConstant(name: Row['constant']): CarbonateConstantRow {
  const row = byName.get(name);
  if (row === undefined) throw new RangeError(`carbonate-constants has no ${name}`);
  return row;
}

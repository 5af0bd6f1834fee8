import { type Row, rows } from './generated/model-parameters.ts';

export type ModelParameterRow = Row;
export const modelParameters: readonly ModelParameterRow[] = rows;

const byName = new Map(rows.map((row) => [row.parameter, row]));

/** One parameter of the forecast model; a name the table does not hold is a programmer's error (RangeError). */
export function modelParameter(name: string): ModelParameterRow {
  const row = byName.get(name);
  if (row === undefined) throw new RangeError(`model-parameters has no ${name}`);
  return row;
}

import { type Row, rows } from './generated/acidification-parameters.ts';

export type AcidificationParameterRow = Row;
/** Figures the acidifying rules rest on. */
export const acidificationParameters: readonly AcidificationParameterRow[] = rows;

/** The figure with that key; an unknown key is a programmer's error. */
export function acidificationParameter(key: string): AcidificationParameterRow {
  const row = rows.find((candidate) => candidate.key === key);
  if (row === undefined) throw new RangeError(`no acidifying figure is called ${key}`);
  return row;
}

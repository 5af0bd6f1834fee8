import { type Row, rows } from './generated/nitrogen-forms.ts';

export type NitrogenFormRow = Row;
/** Forms of fertilizer nitrogen and the acid each leaves. */
export const nitrogenForms: readonly NitrogenFormRow[] = rows;

export type NitrogenForm = NitrogenFormRow['form'];

const byForm = new Map(rows.map((row) => [row.form, row]));

/** The row of a form; the build makes sure that each form has one. */
export function nitrogenFormOf(form: NitrogenForm): NitrogenFormRow {
  const row = byForm.get(form);
  if (row === undefined) throw new RangeError(`no row for nitrogen form ${form}`);
  return row;
}

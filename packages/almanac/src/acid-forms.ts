import { type Row, rows } from './generated/acid-forms.ts';

export type AcidFormRow = Row;
/** Dissociation constants of acids in the soil. */
export const acidForms: readonly AcidFormRow[] = rows;

import { type Row, rows } from './generated/symptom-causes.ts';

export type SymptomCauseRow = Row;
/** Causes the symptom key knows. */
export const symptomCauses: readonly SymptomCauseRow[] = rows;

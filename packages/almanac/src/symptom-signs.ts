import { type Row, rows } from './generated/symptom-signs.ts';

export type SymptomSignRow = Row;
/** Signs of each cause. */
export const symptomSigns: readonly SymptomSignRow[] = rows;

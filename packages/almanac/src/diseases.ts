import { type Row, rows } from './generated/diseases.ts';

export type DiseaseRow = Row;
/** Diseases that follow the pH. */
export const diseases: readonly DiseaseRow[] = rows;

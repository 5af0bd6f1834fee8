import { type Row, rows } from './generated/material-figures.ts';

export type MaterialFigureRow = Row;
/** Published figures behind the defaults of the `materials` table. */
export const materialFigures: readonly MaterialFigureRow[] = rows;

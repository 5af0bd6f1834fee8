import { type Row, rows } from './generated/organic-amendments.ts';

export type OrganicAmendmentRow = Row;
/** What composts, manures and residues did to pH in published work. */
export const organicAmendments: readonly OrganicAmendmentRow[] = rows;

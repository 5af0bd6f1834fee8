import { type Row, rows } from './generated/quality-limits.ts';

export type QualityLimitRow = Row;

/** How often a soil day checks its meters, and how far a check may be off. */
export const qualityLimits: readonly QualityLimitRow[] = rows;

export type QualityCheck = 'buffer' | 'duplicate' | 'reference';

/** The row of one kind of check. */
export function qualityLimit(check: QualityCheck): QualityLimitRow {
  const row = rows.find(({ key }) => key === check);
  if (row === undefined) throw new RangeError(`no row ${check} in quality-limits`);
  return row;
}

import { type Row, rows } from './generated/lead-levels.ts';

export type LeadLevelRow = Row;
/** Lead levels of total soil lead that change the advice. Dated settings: they have moved twice. */
export const leadLevels: readonly LeadLevelRow[] = rows;

/** Total lead of a level as a mass fraction, kg/kg. */
export function leadLevel(level: LeadLevelRow['level']): number {
  const row = rows.find((candidate) => candidate.level === level);
  if (row === undefined) throw new RangeError(`no lead level ${level}`);
  return row.mgPerKg * 1e-6;
}

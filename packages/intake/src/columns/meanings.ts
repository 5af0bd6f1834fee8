import { type ReportColumn, reportColumn, reportColumns } from '@sorrel/almanac/report-columns';

/** Said of a column that is left alone. */
export const NOT_USED = 'not-used';

/** Every meaning a column may be given. */
export const meanings: readonly string[] = reportColumns.map((row) => row.meaning);

/** The almanac's row of a meaning; `undefined` for a column that is not used. */
export const meaningRow = (meaning: string): ReportColumn | undefined => reportColumn.get(meaning);

/** Whether a column of this meaning goes into the plan. */
export const isUsed = (meaning: string): boolean => reportColumn.get(meaning)?.column !== undefined;

const QUANTITIES: ReadonlySet<string> = new Set([
  'ph',
  'lime-index',
  'share',
  'charge',
  'nutrient',
  'conductivity',
  'length',
  'rate',
  'count',
]);
/** Whether the cells of a meaning are figures. */
export const isFigure = (meaning: string): boolean => QUANTITIES.has(reportColumn.get(meaning)?.quantity ?? '');

const MEASURED: ReadonlySet<string> = new Set(['share', 'charge', 'nutrient', 'conductivity', 'length', 'rate']);
/** Whether the figures of a meaning need a unit. */
export const needsUnit = (meaning: string): boolean => MEASURED.has(reportColumn.get(meaning)?.quantity ?? '');

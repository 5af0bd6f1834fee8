import { csvCell, type Problem } from '@sorrel/engine/document';
import { mendColumns } from './returned.ts';

const line = (cells: readonly string[]): string => `${cells.map(csvCell).join(',')}\r\n`;

/** First line of a list of rows to mend: what was added, then the sender's own columns. */
export const mendHeader = (titles: readonly string[]): string => line([...mendColumns, ...titles]);

/**
 * One row to mend as a line of CSV: the line of the file it stood on, the columns at fault, why, and what to do, then its
 * cells exactly as they came.
 */
export function mendLine(row: {
  readonly line: number;
  readonly cells: readonly string[];
  readonly problems: readonly Problem[];
}): string {
  const { problems } = row;
  return line([
    String(row.line),
    [...new Set(problems.map((each) => each.field))].join('; '),
    problems.map((each) => each.message).join(' '),
    [...new Set(problems.map((each) => each.fix))].join(' '),
    ...row.cells,
  ]);
}

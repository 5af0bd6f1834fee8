import { csvCell } from '@sorrel/engine/document';

export type Cell = string | number | undefined;

/** A table as text: a header line, every line ended by CRLF. */
export const csvText = (columns: readonly string[], rows: readonly (readonly Cell[])[]): string =>
  [columns, ...rows].map((row) => `${row.map(csvCell).join(',')}\r\n`).join('');

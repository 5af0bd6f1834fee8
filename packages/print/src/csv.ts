export type Cell = string | number | undefined;

/** A cell as RFC 4180 wants it, with text that a spreadsheet would run as a formula made harmless. */
export function csvCell(value: Cell): string {
  if (value === undefined) return '';
  if (typeof value === 'number') return String(value);
  const safe = /^[=+\-@\t\r]/.test(value) ? `'${value}` : value;
  return /[",\n\r]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/** A table as text: a header line, every line ended by CRLF. */
export const csvText = (columns: readonly string[], rows: readonly (readonly Cell[])[]): string =>
  [columns, ...rows].map((row) => `${row.map(csvCell).join(',')}\r\n`).join('');

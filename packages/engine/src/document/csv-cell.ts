/** What makes a cell need a closer look: most need none. */
const SPECIAL = /^[=+\-@\t]|[",\r\n]/;

/**
 * A cell of a table as RFC 4180 wants it. Text that a spreadsheet would run as a formula gets an apostrophe in front; a
 * number below zero stays a number. `undefined` is an empty cell.
 */
export function csvCell(value: string | number | undefined): string {
  if (value === undefined) return '';
  if (typeof value === 'number') return String(value);
  if (!SPECIAL.test(value)) return value;
  const safe = /^[=+\-@\t\r]/.test(value) && !/^[+-]?[\d.]+$/.test(value) ? `'${value}` : value;
  return /[",\n\r]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

import { pad, padLeft, pageWidth, textWidth, wrap } from './layout.ts';

export interface Column {
  readonly title: string;
  readonly align?: 'left' | 'right';
  /** Whether the column gives way when the page is too narrow: its cells are wrapped. */
  readonly flexible?: boolean;
}

const GAP = 2;

/** A flexible column is made no narrower than this. */
const LEAST = 12;

/** A plain table for people: titles, a rule, rows; flexible columns are wrapped so that the page width holds. */
export function tableText(
  columns: readonly Column[],
  rows: readonly (readonly string[])[],
  options: { readonly indent?: number; readonly rule?: string; readonly width?: number } = {},
): string {
  const { indent = 0, rule = '-', width = pageWidth() } = options;
  const widths = columns.map((column, index) =>
    Math.max(textWidth(column.title), ...rows.map((row) => textWidth(row[index] ?? ''))),
  );
  let excess = widths.reduce((sum, each) => sum + each, 0) + GAP * (columns.length - 1) + indent - width;
  const flexible = columns.flatMap((column, index) => (column.flexible ? [index] : []));
  while (excess > 0) {
    const widest = flexible.reduce(
      (best, index) => ((widths[index] ?? 0) > (widths[best] ?? 0) ? index : best),
      flexible[0] ?? -1,
    );
    if (widest < 0 || (widths[widest] ?? 0) <= LEAST) break;
    widths[widest] = (widths[widest] ?? 0) - 1;
    excess -= 1;
  }
  const line = (cells: readonly string[]): string =>
    (
      ' '.repeat(indent) +
      columns
        .map((column, index) => (column.align === 'right' ? padLeft : pad)(cells[index] ?? '', widths[index] ?? 0))
        .join(' '.repeat(GAP))
    ).trimEnd();
  const body = rows.flatMap((row) => {
    const parts = row.map((cell, index) => (flexible.includes(index) ? wrap(cell, widths[index] ?? LEAST) : [cell]));
    return Array.from({ length: Math.max(...parts.map((part) => part.length)) }, (_, at) =>
      line(parts.map((part) => part[at] ?? '')),
    );
  });
  return [line(columns.map((column) => column.title)), line(widths.map((each) => rule.repeat(each))), ...body].join(
    '\n',
  );
}

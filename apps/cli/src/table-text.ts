import { pad, padLeft, pageWidth, textWidth, wrap } from './layout.ts';

export interface Column {
  readonly title: string;
  readonly align?: 'left' | 'right';
  /** The one column that gives way when the page is too narrow. */
  readonly flexible?: boolean;
}

const GAP = 2;

/** A plain table for people: titles, a rule, rows; the flexible column is wrapped so that the page width holds. */
export function tableText(
  columns: readonly Column[],
  rows: readonly (readonly string[])[],
  options: { readonly indent?: number; readonly rule?: string; readonly width?: number } = {},
): string {
  const { indent = 0, rule = '-', width = pageWidth() } = options;
  const widths = columns.map((column, index) =>
    Math.max(textWidth(column.title), ...rows.map((row) => textWidth(row[index] ?? ''))),
  );
  const flexible = columns.findIndex((column) => column.flexible);
  const used = widths.reduce((sum, each) => sum + each, 0) + GAP * (columns.length - 1) + indent;
  if (flexible >= 0 && used > width) widths[flexible] = Math.max(12, (widths[flexible] ?? 0) - (used - width));
  const line = (cells: readonly string[]): string =>
    (
      ' '.repeat(indent) +
      columns
        .map((column, index) => (column.align === 'right' ? padLeft : pad)(cells[index] ?? '', widths[index] ?? 0))
        .join(' '.repeat(GAP))
    ).trimEnd();
  const body = rows.flatMap((row) => {
    const parts = row.map((cell, index) => (index === flexible ? wrap(cell, widths[index] ?? 12) : [cell]));
    return Array.from({ length: Math.max(...parts.map((part) => part.length)) }, (_, at) =>
      line(parts.map((part) => part[at] ?? '')),
    );
  });
  return [line(columns.map((column) => column.title)), line(widths.map((each) => rule.repeat(each))), ...body].join(
    '\n',
  );
}

import { readTitle, type TitleReading } from '../columns/title.ts';
import { isUnit } from '../columns/units.ts';
import type { TableRecord } from '../records/split.ts';
import { isBlankRow } from './blank.ts';

/** The names of the columns and where they stand. */
export interface Header {
  /** Lines of the header; none when the table starts with its first row. */
  readonly lines: readonly number[];
  /** What stands over each column, from the top, merged titles spread over their columns. */
  readonly parts: readonly (readonly string[])[];
  /** One title a column, each different from the others. */
  readonly titles: readonly string[];
  /** Lines above the header that are no part of the table. */
  readonly above: readonly number[];
}

/** Stands between the parts of a title that was written over several rows. */
export const PART = ' | ';

const LOOKED_AT = 60;
const MOST_ROWS = 3;
const LONGEST_TITLE = 200;

const isFigure = (cell: string): boolean => /^[<>]?\s*[+-]?\d+(?:[.,]\d+)*%?$/.test(cell.trim());

/**
 * Finds the header: the row, or the two or three rows together, that hold most of the names laboratories use. Lines of
 * an address above it are passed by; titles merged over several columns are spread over them.
 */
export function findHeader(records: readonly TableRecord[]): Header {
  const rows = records.filter(({ cells }) => !isBlankRow(cells)).slice(0, LOOKED_AT);
  let best = -1;
  let most = 0;
  for (const [at, row] of rows.entries()) {
    const found = score(row.cells.map((cell) => [cell]));
    if (found > most + 0.01) {
      most = found;
      best = at;
    }
  }
  const width = Math.max(0, ...rows.map(({ cells }) => cells.length));
  if (best < 0) return headless(width, rows);
  let [from, to] = [best, best];
  while (from > 0 && to - from + 1 < MOST_ROWS) {
    const above = rows[from - 1] as TableRecord;
    if (!isGroupRow(above.cells, (rows[best] as TableRecord).cells) || !gains(rows, from, to, -1)) break;
    from -= 1;
  }
  while (to + 1 < rows.length && to - from + 1 < MOST_ROWS) {
    const below = rows[to + 1] as TableRecord;
    if (!isUnderTitle(below.cells) || !gains(rows, from, to, 1)) break;
    to += 1;
  }
  const parts = stack(rows.slice(from, to + 1));
  return {
    lines: rows.slice(from, to + 1).map(({ line }) => line),
    parts,
    titles: distinct(parts.map((part) => part.join(PART))),
    above: rows.slice(0, from).map(({ line }) => line),
  };
}

/** A table without names: its columns are called by number. The first rows count as rows. */
const headless = (width: number, rows: readonly TableRecord[]): Header => {
  const wide = rows.findIndex(({ cells }) => cells.length === width);
  return {
    lines: [],
    parts: Array.from({ length: width }, () => []),
    titles: Array.from({ length: width }, (_, at) => `column ${at + 1}`),
    above: rows.slice(0, Math.max(0, wide)).map(({ line }) => line),
  };
};

/** How much a header is worth: names known, less cells that are figures. */
function score(parts: readonly (readonly string[])[]): number {
  let sum = 0;
  for (const part of parts) {
    const text = part.join(' ').trim();
    if (text === '') continue;
    if (isFigure(text)) sum -= 1;
    else sum += worth(readTitle(part));
  }
  return sum;
}

/** A name in full is worth more than a lone letter, which stands in many a row. */
function worth(reading: TitleReading | undefined): number {
  if (reading === undefined) return 0;
  const known = reading.how === 'exact' ? 1 : reading.how === 'nearly' ? 0.4 : 0.7;
  return reading.name.name.length === 1 ? known / 2 : known;
}

/** A row over the header that groups its columns: several words, no figures, and not a line of an address. */
function isGroupRow(cells: readonly string[], below: readonly string[]): boolean {
  const full = cells.filter((cell) => cell.trim() !== '');
  if (full.some(isFigure) || cells.length > below.length + 1) return false;
  return full.length >= 2 || cells.some((cell, at) => cell.trim() !== '' && at > 0 && (below[at] ?? '').trim() !== '');
}

/** A row under the header that holds units or methods, and no figures. */
function isUnderTitle(cells: readonly string[]): boolean {
  const full = cells.map((cell) => cell.trim()).filter((cell) => cell !== '');
  if (full.length === 0 || full.some(isFigure)) return false;
  const units = full.filter(
    (cell) =>
      isUnit(cell.replace(/^[([{]\s*(.*?)\s*[)\]}]$/, '$1')) || /^[([].*[)\]]$/.test(cell) || /^\d+:\d/.test(cell),
  );
  return units.length >= full.length / 2 || readTitle([full[0] as string]) !== undefined;
}

/** Whether the header says more with one more row above (-1) or below (1). */
function gains(rows: readonly TableRecord[], from: number, to: number, side: -1 | 1): boolean {
  const now = said(stack(rows.slice(from, to + 1)));
  const then = said(stack(rows.slice(side < 0 ? from - 1 : from, side > 0 ? to + 2 : to + 1)));
  return then.names >= now.names && then.names + then.more > now.names + now.more;
}

function said(parts: readonly (readonly string[])[]): { names: number; more: number } {
  let [names, more] = [0, 0];
  for (const part of parts) {
    const reading = readTitle(part);
    if (reading === undefined) continue;
    names += worth(reading);
    if (reading.unit !== undefined) more += 0.5;
    if (reading.method !== undefined || reading.buffer !== undefined) more += 0.5;
  }
  return { names, more };
}

/** Puts header rows over each other, with titles of upper rows spread to the right over empty cells. */
function stack(rows: readonly TableRecord[]): string[][] {
  const width = Math.max(0, ...rows.map(({ cells }) => cells.length));
  const parts: string[][] = Array.from({ length: width }, () => []);
  for (const [at, { cells }] of rows.entries()) {
    let over = '';
    for (let column = 0; column < width; column++) {
      const cell = (cells[column] ?? '').replace(/\s+/g, ' ').trim();
      if (cell !== '') over = cell;
      const spread = at < rows.length - 1 && cells.filter((each) => each.trim() !== '').length > 1 ? over : cell;
      if (spread !== '') parts[column]?.push(spread);
    }
  }
  return parts;
}

/** Titles, each different: the second `Ca` becomes `Ca (2)`; an empty one gets its number. */
function distinct(titles: readonly string[]): string[] {
  const seen = new Map<string, number>();
  return titles.map((title, at) => {
    const name = title === '' ? `column ${at + 1}` : title.slice(0, LONGEST_TITLE);
    const count = (seen.get(name) ?? 0) + 1;
    seen.set(name, count);
    return count === 1 ? name : `${name} (${count})`;
  });
}

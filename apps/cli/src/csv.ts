/** One record of a CSV text. `line` is the line of the file it starts on, counted from 1. */
export interface CsvRecord {
  readonly cells: readonly string[];
  readonly line: number;
}

/** A quoted cell longer than this many lines is taken as a quote that was never closed. */
const MOST_LINES_IN_A_CELL = 50;
/** A line longer than this is no row of a soil test; it is handed on as it is and reported. */
const LONGEST_LINE = 1_000_000;

export interface CsvSplitter {
  /** Takes the next piece of text and gives every record that is complete. */
  push(text: string): CsvRecord[];
  /** Gives what is left at the end of the text. */
  end(): CsvRecord[];
}

/**
 * Splits CSV (RFC 4180) piece by piece, so that a file of any length fits in little memory. A record keeps the number
 * of cells it has: a lost or extra comma stays the fault of its own row and never moves its neighbours' cells. A quote
 * that is never closed costs its own line and no more. Empty lines are passed over; a byte order mark is dropped.
 */
export function csvSplitter(): CsvSplitter {
  let rest = '';
  let line = 1;
  let started = false;
  const take = (text: string, last: boolean): CsvRecord[] => {
    rest += text;
    if (!started && rest !== '') {
      started = true;
      if (rest.charCodeAt(0) === 0xfeff) rest = rest.slice(1);
    }
    const records: CsvRecord[] = [];
    let at = 0;
    // Quotes are rare: the next one is looked for once, not again on every line before it.
    let quote = -1;
    while (at < rest.length) {
      const newline = rest.indexOf('\n', at);
      if (newline < 0 && !last && rest.length - at < LONGEST_LINE) break;
      const end = newline < 0 ? rest.length : newline;
      if (quote < at) {
        quote = rest.indexOf('"', at);
        if (quote < 0) quote = Number.POSITIVE_INFINITY;
      }
      if (quote >= end) {
        const raw = rest.slice(at, rest.charCodeAt(end - 1) === 13 && end > at ? end - 1 : end);
        if (raw.trim() !== '') records.push({ cells: raw.split(','), line });
        at = end + 1;
        line += 1;
        continue;
      }
      const read = quoted(rest, at, last);
      if (read === undefined) break;
      records.push({ cells: read.cells, line });
      at = read.end;
      line += read.lines;
    }
    rest = rest.slice(at);
    return records;
  };
  return { push: (text) => take(text, false), end: () => take('', true) };
}

interface Quoted {
  readonly cells: readonly string[];
  /** Where the next record starts. */
  readonly end: number;
  readonly lines: number;
}

/** A record with a quote in it; `undefined` when its end has not come yet. */
function quoted(text: string, start: number, last: boolean): Quoted | undefined {
  const cells: string[] = [];
  let at = start;
  let lines = 1;
  for (;;) {
    if (text[at] === '"') {
      let cell = '';
      let from = at + 1;
      for (;;) {
        const close = text.indexOf('"', from);
        const inner = text.slice(from, close < 0 ? text.length : close);
        lines += inner.split('\n').length - 1;
        if (lines > MOST_LINES_IN_A_CELL || text.length - start > LONGEST_LINE || (close < 0 && last))
          return unclosed(text, start);
        if (close < 0 || (close + 1 >= text.length && !last)) return undefined;
        cell += inner;
        from = close + 1;
        if (text[from] !== '"') break;
        cell += '"';
        from += 1;
      }
      const stray = endOfCell(text, from);
      cells.push(cell + text.slice(from, stray).trimEnd());
      at = stray;
    } else {
      const end = endOfCell(text, at);
      cells.push(text.slice(at, text.charCodeAt(end - 1) === 13 && end > at && text[end] !== ',' ? end - 1 : end));
      at = end;
    }
    if (at >= text.length) return last ? { cells, end: at + 1, lines } : undefined;
    if (text[at] === '\n') return { cells, end: at + 1, lines };
    at += 1;
  }
}

function endOfCell(text: string, from: number): number {
  for (let at = from; at < text.length; at++) if (text[at] === ',' || text[at] === '\n') return at;
  return text.length;
}

/** The line as it stands, quote and all: it will be reported as a bad row. */
function unclosed(text: string, start: number): Quoted {
  const newline = text.indexOf('\n', start);
  const end = newline < 0 ? text.length : newline;
  return { cells: [text.slice(start, end).trimEnd()], end: end + 1, lines: 1 };
}

/** What makes a cell need a closer look: most need none. */
const SPECIAL = /^[=+\-@\t]|[",\r\n]/;

/** A cell as RFC 4180 wants it, with text that a spreadsheet would run as a formula made harmless. */
export function csvCell(value: string | number | undefined): string {
  if (value === undefined) return '';
  if (typeof value === 'number') return String(value);
  if (!SPECIAL.test(value)) return value;
  const safe = /^[=+\-@\t\r]/.test(value) && !/^[+-]?[\d.]+$/.test(value) ? `'${value}` : value;
  return /[",\n\r]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

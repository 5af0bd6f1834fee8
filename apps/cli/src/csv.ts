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

/** What a scan tells of the text it walks over. */
interface Listener {
  /** A line without a quote, not blank: `text.slice(from, to)`. */
  plain(text: string, from: number, to: number, line: number): void;
  /** A record with quotes in it, from `from` up to `read.end`. */
  quoted(text: string, from: number, read: Quoted, line: number): void;
  /** The text up to here is done with: what was kept of it must be taken now. */
  done(text: string, upTo: number): void;
}

/** Walks over CSV piece by piece and tells where each record stands. */
function scan(listener: Listener, firstLine = 1): (text: string, last: boolean) => void {
  let rest = '';
  let line = firstLine;
  let started = firstLine > 1;
  return (text, last) => {
    rest += text;
    if (!started && rest !== '') {
      started = true;
      if (rest.charCodeAt(0) === 0xfeff) rest = rest.slice(1);
    }
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
        if (!isBlank(rest, at, end)) listener.plain(rest, at, end, line);
        at = end + 1;
        line += 1;
        continue;
      }
      const read = quoted(rest, at, last);
      if (read === undefined) break;
      listener.quoted(rest, at, read, line);
      at = read.end;
      line += read.lines;
    }
    listener.done(rest, Math.min(at, rest.length));
    rest = rest.slice(at);
  };
}

function isBlank(text: string, from: number, to: number): boolean {
  const first = text.charCodeAt(from);
  return from >= to || ((first <= 32 || first >= 0xa0) && text.slice(from, to).trim() === '');
}

const COMMA = 44;
const RETURN = 13;

/**
 * The cells of a line without quotes, put into `cells`. The carriage return that some systems put before the line feed
 * is left out. Most cells of a wide table are empty and cost nothing.
 */
function cellsOf(text: string, from: number, to: number, cells: string[]): string[] {
  const end = to > from && text.charCodeAt(to - 1) === RETURN ? to - 1 : to;
  let count = 0;
  let start = from;
  for (let at = from; at < end; at++) {
    if (text.charCodeAt(at) !== COMMA) continue;
    cells[count++] = at === start ? '' : text.slice(start, at);
    start = at + 1;
  }
  cells[count++] = start === end ? '' : text.slice(start, end);
  cells.length = count;
  return cells;
}

/**
 * Splits CSV (RFC 4180) piece by piece, so that a file of any length fits in little memory. A record keeps the number
 * of cells it has: a lost or extra comma stays the fault of its own row and never moves its neighbours' cells. A quote
 * that is never closed costs its own line and no more. Empty lines are passed over; a byte order mark is dropped.
 *
 * @param firstLine number of the text's first line, for a piece from the middle of a file
 */
export function csvSplitter(firstLine = 1): CsvSplitter {
  let records: CsvRecord[] = [];
  const take = scan(
    {
      plain: (text, from, to, line) => records.push({ cells: cellsOf(text, from, to, []), line }),
      quoted: (_text, _from, read, line) => records.push({ cells: read.cells, line }),
      done: () => {},
    },
    firstLine,
  );
  const taken = (text: string, last: boolean): CsvRecord[] => {
    take(text, last);
    const found = records;
    records = [];
    return found;
  };
  return { push: (text) => taken(text, false), end: () => taken('', true) };
}

/**
 * Reads a whole CSV text as `csvSplitter` does, and hands each record on at once. The array of cells is used again for
 * the next record: whoever wants to keep it makes a copy.
 *
 * @param firstLine number of the text's first line, for a piece from the middle of a file
 */
export function eachRecord(text: string, firstLine: number, take: (cells: readonly string[], line: number) => void) {
  const again: string[] = [];
  scan(
    {
      plain: (whole, from, to, line) => take(cellsOf(whole, from, to, again), line),
      quoted: (_whole, _from, read, line) => take(read.cells, line),
      done: () => {},
    },
    firstLine,
  )(text, true);
}

/** Whole records of a CSV text: as text that another thread can split, or one record whose quote is never closed. */
export type CsvRun =
  | { readonly text: string; readonly line: number; readonly records: number }
  | (CsvRecord & { readonly records: 1 });

export interface CsvCutter {
  push(text: string): CsvRun[];
  end(): CsvRun[];
}

/** Cuts CSV between records without splitting it into cells; `csvSplitter(run.line)` reads each run as it would the whole. */
export function csvCutter(): CsvCutter {
  let runs: CsvRun[] = [];
  let start = -1;
  let startLine = 0;
  let count = 0;
  const grow = (from: number, line: number) => {
    if (start < 0) {
      start = from;
      startLine = line;
    }
    count += 1;
  };
  const close = (text: string, upTo: number) => {
    if (start >= 0) runs.push({ text: text.slice(start, upTo), line: startLine, records: count });
    start = -1;
    count = 0;
  };
  const take = scan({
    plain: (_text, from, _to, line) => grow(from, line),
    quoted: (text, from, read, line) => {
      if (read.closed) return grow(from, line);
      close(text, from);
      runs.push({ cells: read.cells, line, records: 1 });
    },
    done: close,
  });
  const taken = (text: string, last: boolean): CsvRun[] => {
    take(text, last);
    const found = runs;
    runs = [];
    return found;
  };
  return { push: (text) => taken(text, false), end: () => taken('', true) };
}

interface Quoted {
  /** False when the quote was never closed and the line stands as it is. */
  readonly closed: boolean;
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
        if (
          lines > MOST_LINES_IN_A_CELL ||
          (close < 0 ? text.length : close) - start > LONGEST_LINE ||
          (close < 0 && last)
        )
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
    if (at >= text.length) return last ? { closed: true, cells, end: at + 1, lines } : undefined;
    if (text[at] === '\n') return { closed: true, cells, end: at + 1, lines };
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
  return { closed: false, cells: [text.slice(start, end).trimEnd()], end: end + 1, lines: 1 };
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

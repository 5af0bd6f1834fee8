import { cellsOf } from './cells-of.ts';
import { scan } from './scan.ts';
import { splitter, type TableRecord } from './split.ts';

/** Whole records: as text that another thread can split, or one record that stands as it is. Plain data. */
export type Run =
  | { readonly text: string; readonly line: number; readonly records: number }
  | { readonly rows: readonly TableRecord[]; readonly records: number };

export interface Cutter {
  push(text: string): Run[];
  end(): Run[];
}

/** Cuts text between records without splitting it into cells. */
export function cutter(delimiter: string): Cutter {
  let runs: Run[] = [];
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
  const take = scan(
    {
      plain: (_text, from, _to, line) => grow(from, line),
      quoted: (text, from, read, line) => {
        if (read.closed) return grow(from, line);
        close(text, from);
        runs.push({ rows: [{ cells: read.cells, line, torn: true }], records: 1 });
      },
      done: close,
    },
    delimiter,
  );
  const taken = (text: string, last: boolean): Run[] => {
    take(text, last);
    const found = runs;
    runs = [];
    return found;
  };
  return { push: (text) => taken(text, false), end: () => taken('', true) };
}

/** The records of a run. */
export function recordsOf(run: Run, delimiter: string): readonly TableRecord[] {
  if ('rows' in run) return run.rows;
  const split = splitter(delimiter, run.line);
  const records = split.push(run.text);
  const rest = split.end();
  return rest.length === 0 ? records : [...records, ...rest];
}

/**
 * Hands on each record of a run. The record and its cells are only good until the next one: whoever keeps them must copy
 * them. Making no new ones for a million rows is worth it.
 */
export function eachRecord(run: Run, delimiter: string, take: (record: TableRecord) => void): void {
  if ('rows' in run) {
    for (const record of run.rows) take(record);
    return;
  }
  const cells: string[] = [];
  const record = { cells: cells as readonly string[], line: 0 };
  scan(
    {
      plain: (text, from, to, line) => {
        record.cells = cellsOf(text, from, to, delimiter, cells);
        record.line = line;
        take(record);
      },
      quoted: (_text, _from, read, line) =>
        take(read.closed ? { cells: read.cells, line } : { cells: read.cells, line, torn: true }),
      done: () => {},
    },
    delimiter,
    run.line,
  )(run.text, true);
}

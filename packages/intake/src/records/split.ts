import { cellsOf } from './cells-of.ts';
import { scan } from './scan.ts';

/** One record of a table. `line` is the line of the file it starts on, counted from 1. */
export interface TableRecord {
  readonly cells: readonly string[];
  readonly line: number;
  /** Set when a quote in it was never closed, so that its cells could not be told apart. */
  readonly torn?: true;
}

export interface Splitter {
  /** Takes the next piece of text and gives every record that is complete. */
  push(text: string): TableRecord[];
  /** Gives what is left at the end of the text. */
  end(): TableRecord[];
}

/**
 * Splits delimited text (RFC 4180, with any one sign between cells) piece by piece, so that a file of any length fits in
 * little memory. A record keeps the number of cells it has: a lost or extra delimiter stays the fault of its own row. A
 * quote that is never closed costs its own line and no more.
 */
export function splitter(delimiter: string, firstLine = 1): Splitter {
  let records: TableRecord[] = [];
  const take = scan(
    {
      plain: (text, from, to, line) => records.push({ cells: cellsOf(text, from, to, delimiter, []), line }),
      quoted: (_text, _from, { cells, closed }, line) =>
        records.push(closed ? { cells, line } : { cells, line, torn: true }),
      done: () => {},
    },
    delimiter,
    firstLine,
  );
  const taken = (text: string, last: boolean): TableRecord[] => {
    take(text, last);
    const found = records;
    records = [];
    return found;
  };
  return { push: (text) => taken(text, false), end: () => taken('', true) };
}

import { LONGEST_LINE, type Quoted, quotedRecord } from './quoted.ts';

/** What a scan tells of the text it walks over. */
export interface Listener {
  /** A line without a quote: `text.slice(from, to)`. */
  plain(text: string, from: number, to: number, line: number): void;
  /** A record with quotes in it, from `from` up to `read.end`. */
  quoted(text: string, from: number, read: Quoted, line: number): void;
  /** The text up to here is done with: what was kept of it must be taken now. */
  done(text: string, upTo: number): void;
}

/**
 * Walks over delimited text piece by piece and tells where each record stands. Lines without any letter are passed over.
 *
 * @param firstLine number of the text's first line, for a piece from the middle of a file
 */
export function scan(listener: Listener, delimiter: string, firstLine = 1): (text: string, last: boolean) => void {
  let rest = '';
  let line = firstLine;
  return (text, last) => {
    rest += text;
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
      const read = quotedRecord(rest, at, last, delimiter);
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
  if (from >= to) return true;
  const first = text.charCodeAt(from);
  return (first <= 32 || first >= 0xa0) && text.slice(from, to).trim() === '';
}

/** A line longer than this is no row of a soil test; it is handed on as it is and reported. */
export const LONGEST_LINE = 1_000_000;
/** A quoted cell longer than this many lines is taken as a quote that was never closed. */
const MOST_LINES_IN_A_CELL = 50;

/** A record with a quote in it. */
export interface Quoted {
  /** False when the quote was never closed and the line stands as it is. */
  readonly closed: boolean;
  readonly cells: readonly string[];
  /** Where the next record starts. */
  readonly end: number;
  readonly lines: number;
}

/** Reads a record that has a quote in it; `undefined` when its end has not come yet and more text follows. */
export function quotedRecord(text: string, start: number, last: boolean, delimiter: string): Quoted | undefined {
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
      const stray = endOfCell(text, from, delimiter);
      cells.push(cell + text.slice(from, stray).trimEnd());
      at = stray;
    } else {
      const end = endOfCell(text, at, delimiter);
      const returned = text.charCodeAt(end - 1) === 13 && end > at && text[end] !== delimiter;
      cells.push(text.slice(at, returned ? end - 1 : end));
      at = end;
    }
    if (at >= text.length) return last ? { closed: true, cells, end: at + 1, lines } : undefined;
    if (text[at] === '\n') return { closed: true, cells, end: at + 1, lines };
    at += 1;
  }
}

function endOfCell(text: string, from: number, delimiter: string): number {
  for (let at = from; at < text.length; at++) if (text[at] === delimiter || text[at] === '\n') return at;
  return text.length;
}

/** The line as it stands, quote and all: it will be reported. */
function unclosed(text: string, start: number): Quoted {
  const newline = text.indexOf('\n', start);
  const end = newline < 0 ? text.length : newline;
  return { closed: false, cells: [text.slice(start, end).trimEnd()], end: end + 1, lines: 1 };
}

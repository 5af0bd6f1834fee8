/** One record of a pasted table; `line` counts from 1, where it starts. */
export interface TableLine {
  readonly cells: readonly string[];
  readonly line: number;
}

/**
 * Splits pasted cells or the text of a CSV file (RFC 4180). Commas, semicolons or tabs part the cells, whichever the
 * first line has most of. A quote that is never closed spoils its own line only. Empty lines are passed over.
 */
export function splitTable(text: string): readonly TableLine[] {
  const whole = text.replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n');
  const comma = separatorOf(whole.slice(0, whole.indexOf('\n') < 0 ? undefined : whole.indexOf('\n')));
  const found: TableLine[] = [];
  let line = 1;
  for (let at = 0; at < whole.length; ) {
    const read = readLine(whole, at, comma) ?? unclosed(whole, at);
    if (read.cells.some((cell) => cell.trim() !== '')) found.push({ cells: read.cells, line });
    line += whole.slice(at, read.end).split('\n').length - 1;
    at = read.end;
  }
  return found;
}

function separatorOf(first: string): string {
  const count = (mark: string) => first.split(mark).length;
  return ['\t', ';', ','].reduce((best, mark) => (count(mark) > count(best) ? mark : best), ',');
}

interface Read {
  readonly cells: readonly string[];
  readonly end: number;
}

function readLine(text: string, start: number, comma: string): Read | undefined {
  const cells: string[] = [];
  let at = start;
  for (;;) {
    let cell = '';
    if (text[at] === '"') {
      at += 1;
      for (;;) {
        const close = text.indexOf('"', at);
        if (close < 0) return undefined;
        cell += text.slice(at, close);
        at = close + 1;
        if (text[at] !== '"') break;
        cell += '"';
        at += 1;
      }
    }
    let end = at;
    while (end < text.length && text[end] !== comma && text[end] !== '\n') end += 1;
    cells.push((cell + text.slice(at, end)).trim());
    at = end;
    if (at >= text.length) return { cells, end: at };
    if (text[at] === '\n') return { cells, end: at + 1 };
    at += 1;
  }
}

/** A line whose quote is never closed, as it stands: its check will say what is wrong. */
function unclosed(text: string, start: number): Read {
  const newline = text.indexOf('\n', start);
  const end = newline < 0 ? text.length : newline;
  return { cells: [text.slice(start, end).trim()], end: newline < 0 ? end : end + 1 };
}

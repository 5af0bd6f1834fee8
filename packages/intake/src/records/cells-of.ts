const RETURN = 13;

/**
 * The cells of a line without quotes, `text.slice(from, to)`, put into `cells`. The carriage return that some systems put
 * before the line feed is left out. Most cells of a wide table are empty and cost nothing.
 *
 * @param delimiter one sign
 * @param cells an array that is filled anew; it may be used again for the next line
 */
export function cellsOf(text: string, from: number, to: number, delimiter: string, cells: string[]): string[] {
  const sign = delimiter.charCodeAt(0);
  const end = to > from && text.charCodeAt(to - 1) === RETURN ? to - 1 : to;
  let count = 0;
  let start = from;
  for (let at = from; at < end; at++) {
    if (text.charCodeAt(at) !== sign) continue;
    cells[count++] = at === start ? '' : text.slice(start, at);
    start = at + 1;
  }
  cells[count++] = start === end ? '' : text.slice(start, end);
  if (cells.length !== count) cells.length = count;
  return cells;
}

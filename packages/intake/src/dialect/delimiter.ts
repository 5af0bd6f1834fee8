import { splitter } from '../records/split.ts';

/** Signs that stand between cells, likeliest first. */
export const delimiters = [',', ';', '\t', '|'] as const;
export type Delimiter = (typeof delimiters)[number];

const LOOKED_AT = 200;

/** A cell that still holds several figures was cut at the wrong sign. */
const UNCUT = /\d\s*[;\t|]\s*[\d"]/;

/**
 * Tells which sign stands between the cells: the one that gives most rows the same number of cells, whose cells do not
 * themselves look like rows. A first line such as `sep=;` is believed.
 *
 * @param text the beginning of the file, cut after a line end if it was cut
 */
export function delimiterOf(text: string): Delimiter {
  const said = /^\uFEFF?"?sep=([,;\t|])"?\r?\n/i.exec(text)?.[1];
  if (said !== undefined) return said as Delimiter;
  let best: Delimiter = ',';
  let most = 0;
  for (const delimiter of delimiters) {
    const found = score(text, delimiter);
    if (found > most) {
      best = delimiter;
      most = found;
    }
  }
  return best;
}

function score(text: string, delimiter: string): number {
  const split = splitter(delimiter);
  const rows = [...split.push(text), ...split.end()].slice(0, LOOKED_AT);
  const widths = new Map<number, number>();
  let [cells, uncut] = [0, 0];
  for (const row of rows) {
    widths.set(row.cells.length, (widths.get(row.cells.length) ?? 0) + 1);
    for (const cell of row.cells) {
      if (cell.trim() === '') continue;
      cells += 1;
      if (UNCUT.test(cell)) uncut += 1;
    }
  }
  let score = 0;
  for (const [width, count] of widths)
    if (width > 1) score = Math.max(score, (count / rows.length) * (1 + Math.log2(width) / 20));
  return cells === 0 ? 0 : score * (1 - uncut / cells);
}

import { cut, pad, padLeft, pageWidth } from './layout.ts';
import { words } from './words.ts';

/** One place on the shared pH line. */
export interface PhRow {
  readonly name: string;
  readonly present?: { readonly mean: number; readonly sd: number };
  readonly low: number;
  readonly high: number;
  /** Where the plan leads; absent when nothing is to be done. */
  readonly aim?: number;
  /** A word or two at the end of the row. */
  readonly verdict: string;
}

interface Glyphs {
  readonly today: string;
  readonly smear: string;
  readonly path: string;
  readonly right: string;
  readonly left: string;
  readonly within: string;
  readonly tick: string;
  readonly more: string;
}

const FANCY: Glyphs = { today: '●', smear: '░', path: '─', right: '▶', left: '◀', within: '·', tick: '┬', more: '…' };
const ASCII: Glyphs = { today: 'O', smear: '~', path: '-', right: '>', left: '<', within: '.', tick: '+', more: '~' };

/** Today is smeared over the middle 95 % of where the pH may be. */
const SMEAR = 1.96;

/**
 * All places on one pH axis: a mark for today smeared by its uncertainty, a bracket for what the plants want and an
 * arrow for the plan. Reads without colour, in ASCII when it must.
 */
export function phLine(rows: readonly PhRow[], unicode: boolean, width = pageWidth()): string {
  const glyphs = unicode ? FANCY : ASCII;
  const nameWidth = Math.min(26, Math.max(8, ...rows.map((row) => row.name.length)));
  const verdictWidth = Math.max(...rows.map((row) => row.verdict.length));
  const span = axisSpan(rows);
  const cells = Math.max(20, width - nameWidth - verdictWidth - 4);
  const at = (ph: number): number =>
    Math.round(((Math.min(Math.max(ph, span.low), span.high) - span.low) / (span.high - span.low)) * (cells - 1));
  const axis = Array.from({ length: cells }, () => ' ');
  for (let ph = span.low; ph <= span.high; ph++) {
    const digits = String(ph);
    const start = Math.min(at(ph), cells - digits.length);
    for (let i = 0; i < digits.length; i++) axis[start + i] = digits[i] ?? '';
  }
  const head = `${pad(words.phAxis, nameWidth)}  ${axis.join('')}`.trimEnd();
  const lines = rows.map(
    (row) =>
      `${pad(cut(row.name, nameWidth, glyphs.more), nameWidth)}  ${drawn(row, cells, at, glyphs).join('')}  ${padLeft(row.verdict, verdictWidth)}`,
  );
  const key = words.phKey({ ...glyphs, arrow: `${glyphs.path}${glyphs.right}` });
  return [head, ...lines, '', key].join('\n');
}

function axisSpan(rows: readonly PhRow[]): { low: number; high: number } {
  const values = rows.flatMap((row) => [row.low, row.high, row.aim ?? row.low, row.present?.mean ?? row.low]);
  return { low: Math.floor(Math.min(4, ...values)), high: Math.ceil(Math.max(8, ...values)) };
}

function drawn(row: PhRow, cells: number, at: (ph: number) => number, glyphs: Glyphs): string[] {
  const line = Array.from({ length: cells }, () => ' ');
  const fill = (from: number, to: number, glyph: string) => {
    for (let i = Math.min(from, to); i <= Math.max(from, to); i++) line[i] = glyph;
  };
  const { present, aim } = row;
  fill(at(row.low), at(row.high), glyphs.within);
  if (present !== undefined && aim !== undefined) fill(at(present.mean), at(aim), glyphs.path);
  if (present !== undefined)
    fill(at(present.mean - SMEAR * present.sd), at(present.mean + SMEAR * present.sd), glyphs.smear);
  line[at(row.low)] = '[';
  line[at(row.high)] = ']';
  if (present !== undefined && aim !== undefined && at(aim) !== at(present.mean))
    line[at(aim)] = aim > present.mean ? glyphs.right : glyphs.left;
  if (present !== undefined) line[at(present.mean)] = glyphs.today;
  return line;
}

import type { Problem } from '@sorrel/engine/document';
import { type DateOrder, readDate } from '../cells/date.ts';
import { depthOf } from '../cells/depth.ts';
import { readFigure } from '../cells/figure.ts';
import { isPlain } from '../cells/number.ts';
import { usualWord, wordsOf } from '../cells/words.ts';
import { isFigure } from '../columns/meanings.ts';
import { factorOf, unitFor } from '../columns/units.ts';
import { problem } from '../problem.ts';
import type { RowsSetup, UsedColumn } from './setup.ts';

/** Something in a row that was read and is not used as a figure. */
export interface Note {
  readonly title: string;
  readonly kind: 'below' | 'not-detected' | 'no-day';
  readonly cell: string;
}

/** What a row gathers while its cells are read. */
export interface Gathered {
  readonly problems: Problem[];
  readonly notes: Note[];
}

/** Turns a cell that is not empty into what a table of soil tests holds; empty when there is nothing to use. */
export type Step = (cell: string, row: Gathered) => string;

/** A limit of these is no reason to leave them out quietly: they decide how much is spread. */
const NEEDED: ReadonlySet<string> = new Set(['ph', 'buffer-ph', 'lime-index']);
/** Units that the engine wants behind the figure. */
const BEHIND: Readonly<Record<string, string>> = { conductivity: ' dS/m', length: ' cm', rate: ' g/m2' };
const MOST_KEPT = 5000;

/** Most cells have no blank at either end; asking is cheaper than trimming. */
function trimmed(cell: string): string {
  const first = cell.charCodeAt(0);
  const last = cell.charCodeAt(cell.length - 1);
  return first > 32 && first < 127 && last > 32 && last < 127 ? cell : cell.trim();
}

/** The step of one column. */
export function stepOf(column: UsedColumn, setup: RowsSetup): Step {
  const step = stepFor(column, setup);
  if (isFigure(column.means)) return step;
  return (cell, row) => {
    const text = trimmed(cell);
    return text === '' ? '' : step(text, row);
  };
}

function stepFor(column: UsedColumn, setup: RowsSetup): Step {
  switch (column.quantity) {
    case 'text':
      return (cell, { problems }) => {
        if (!cell.includes('\ufffd')) return cell;
        problems.push(problem('intake.letters', column.title, cell));
        return '';
      };
    case 'date':
      return dateStep(column, setup.dates);
    case 'word':
      return wordStep(column);
    case 'plants':
      return (cell) =>
        usualWord(cell) === undefined ? (cell.includes(';') ? cell : cell.replace(/\s*[,/&+]\s*/g, '; ')) : '';
    case 'area':
    case 'volume':
    case 'alkalinity':
      return (cell) => {
        if (usualWord(cell) !== undefined) return '';
        return column.unit !== undefined && /^[\d.,]+$/.test(cell) ? `${cell} ${column.unit}` : cell;
      };
    default:
      return figureStep(column, setup);
  }
}

function figureStep(column: UsedColumn, { decimal }: RowsSetup): Step {
  const { factor, quantity, title } = column;
  const behind = BEHIND[quantity] ?? '';
  const bare = factor === 1 && behind === '';
  const out = (value: number): string => `${value}${behind}`;
  // Cells that carry a unit, such as depths, repeat all the way down.
  const read = new Map<string, string>();
  const keep = (cell: string, value: string): string => {
    if (read.size >= MOST_KEPT) read.clear();
    read.set(cell, value);
    return value;
  };
  return (raw, row) => {
    // Nearly every cell: digits and at most a point, which have no blanks around them either.
    if (factor !== undefined && isPlain(raw, decimal)) return bare ? raw : out(Number(raw) * factor);
    const cell = trimmed(raw);
    if (cell === '') return '';
    const known = read.get(cell);
    if (known !== undefined) return known;
    const figure = readFigure(cell, decimal);
    switch (figure.kind) {
      case 'blank':
        return '';
      case 'number':
      case 'range': {
        const by = figure.unit === undefined ? factor : factorWithin(figure.unit, column);
        if (by === undefined) return fault('intake.unit-in-cell', cell, column, row);
        if (figure.kind === 'number') return keep(cell, out(figure.value * by));
        const depth = quantity === 'length' ? depthOf(figure) : undefined;
        if (depth === 'below-surface') return fault('intake.not-from-surface', cell, column, row);
        return depth === undefined ? fault('intake.range', cell, column, row) : keep(cell, out(depth * by));
      }
      case 'below':
      case 'not-detected':
        if (figure.kind === 'below' && NEEDED.has(column.means)) return fault('intake.limit', cell, column, row);
        row.notes.push({ title, kind: figure.kind, cell });
        return '';
      case 'above':
        return fault('intake.limit', cell, column, row);
      case 'ambiguous':
        return fault('intake.either', cell, column, row);
      case 'broken':
        return fault('intake.broken', cell, column, row);
      default:
        return fault('intake.not-a-figure', cell, column, row);
    }
  };
}

type Fault =
  | 'intake.unit-in-cell'
  | 'intake.not-from-surface'
  | 'intake.range'
  | 'intake.limit'
  | 'intake.either'
  | 'intake.broken'
  | 'intake.not-a-figure'
  | 'intake.date'
  | 'intake.date-order'
  | 'intake.word';

function fault(code: Fault, cell: string, { title }: UsedColumn, { problems }: Gathered): '' {
  problems.push(problem(code, title, cell));
  return '';
}

/** The factor of a unit that a cell carries itself. */
function factorWithin(written: string, column: UsedColumn): number | undefined {
  if (column.quantity === 'ph') return /^ph$/i.test(written) ? 1 : undefined;
  const unit = unitFor(written, column);
  // M is a thousand square feet behind a rate, and a medium level behind anything else.
  if (unit === undefined && written === 'M') return column.factor;
  return unit === undefined || unit.by_volume ? undefined : factorOf(unit, column, column.oxide);
}

function dateStep(column: UsedColumn, order: DateOrder | undefined): Step {
  const read = new Map<string, string | undefined>();
  return (cell, row) => {
    let day = read.get(cell);
    if (day === undefined) {
      if (usualWord(cell) !== undefined) return '';
      day = readDate(cell, order);
      if (day === undefined || day === 'order')
        return fault(day === 'order' ? 'intake.date-order' : 'intake.date', cell, column, row);
      if (read.size >= MOST_KEPT) read.clear();
      read.set(cell, day);
    }
    return day;
  };
}

const KINDS = {
  'ph-method': 'ph-method',
  'buffer-kind': 'buffer',
  texture: 'texture',
  'acid-fizz': 'acid-fizz',
} as const;

/** The engine's word for what a laboratory writes; `undefined` when it is not known. */
export function knownWord(means: string, cell: string): string | undefined {
  const kind = Object.hasOwn(KINDS, means) ? KINDS[means as keyof typeof KINDS] : undefined;
  const small = cell.toLowerCase().replace(/\s+/g, ' ');
  return kind === undefined ? small : wordsOf(kind).get(small);
}

function wordStep(column: UsedColumn): Step {
  const read = new Map<string, string>();
  return (cell, row) => {
    const known = read.get(cell);
    if (known !== undefined) return known;
    const word = knownWord(column.means, cell);
    if (word !== undefined) {
      if (read.size < MOST_KEPT) read.set(cell, word);
      return word;
    }
    return usualWord(cell) === 'blank' ? '' : fault('intake.word', cell, column, row);
  };
}

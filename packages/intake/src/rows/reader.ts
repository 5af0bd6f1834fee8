import { type Problem, type RowDefaults, rowReader } from '@sorrel/engine/document';
import type { Place } from '@sorrel/engine/plan';
import { headsTotals } from '../cells/words.ts';
import { isBlankRow } from '../dialect/blank.ts';
import { problem } from '../problem.ts';
import type { TableRecord } from '../records/split.ts';
import { unguarded } from './returned.ts';
import type { RowsSetup } from './setup.ts';
import { type Gathered, type Note, type Step, stepOf } from './steps.ts';

/** What became of one row: ready to be planned, or to be mended by a person. Never both, never neither. */
export type RowOutcome =
  | { readonly state: 'ready'; readonly line: number; readonly place: Place; readonly notes?: readonly Note[] }
  | {
      readonly state: 'attention';
      readonly line: number;
      /** As they came. */
      readonly cells: readonly string[];
      readonly problems: readonly Problem[];
    };

export interface MappedReader {
  /**
   * Reads one record of the file.
   *
   * @returns `undefined` for lines up to the header and for records without a single filled cell, which are no rows
   */
  read(record: TableRecord): RowOutcome | undefined;
  /** The row that was read last, in the notation of a table of soil tests: for who keeps the test itself. */
  said(): SaidCells;
  /** Cells of a record as the sender wrote them, without what a list of rows to mend adds. */
  own(record: TableRecord): readonly string[];
}

export interface SaidCells {
  /** Columns of a table of soil tests. */
  readonly columns: readonly string[];
  readonly cells: readonly string[];
}

/**
 * Reads rows of a sender's file by its mapping. The cells are put in the notation of a table of soil tests and read by
 * the engine's own reader of rows, which knows what a soil can be.
 *
 * @param setup made by `setupOf`; plain data, also on another thread
 * @param defaults today, and the region when the file has none
 */
export function mappedReader(setup: RowsSetup, defaults: RowDefaults): MappedReader {
  const { after, columns, same, titles, ragged, returned } = setup;
  const width = titles.length;
  const steps: readonly { readonly at: number; readonly to: number; readonly step: Step }[] = columns.map(
    (column, to) => ({
      at: column.at,
      to,
      step: stepOf(column, setup),
    }),
  );
  const names = [...columns.map(({ to }) => to), ...same.map(([name]) => name)];
  const reader = rowReader(names, defaults);
  const out: string[] = [...columns.map(() => ''), ...same.map(([, value]) => value)];
  const phAt = columns.find(({ to }) => to === 'ph')?.at ?? 0;
  const nameAt = columns.find(({ to }) => to === 'place')?.at ?? 0;
  const titleOf = new Map(columns.map(({ to, title }) => [to, title]));
  const gathered: { problems: Problem[]; notes: Note[] } = { problems: [], notes: [] };
  const dayAt = columns.findIndex(({ to }) => to === 'date');
  const dropped = new Set(returned?.added ?? []);

  const own = ({ cells }: TableRecord): readonly string[] =>
    returned === undefined ? [...cells] : cells.filter((_, at) => !dropped.has(at)).map(unguarded);
  const attention = (record: TableRecord, line: number, problems: readonly Problem[]): RowOutcome => ({
    state: 'attention',
    line,
    cells: own(record),
    problems,
  });

  return {
    own,
    said: () => ({ columns: names, cells: [...out] }),
    read(record) {
      const { cells } = record;
      if (record.line <= after) return undefined;
      const blank = cells[phAt] === undefined || cells[phAt] === '';
      if (blank && isBlankRow(cells)) return undefined;
      const line = returned === undefined ? record.line : lineOf(cells[returned.lineAt], record.line);
      if (record.torn) return attention(record, line, [problem('intake.torn', 'row', cells[0] ?? '')]);
      if (cells.length !== width && !fits(cells, width, ragged))
        return attention(record, line, [
          problem('intake.width', 'row', String(cells.length), { found: cells.length, wanted: width }),
        ]);
      const name = cells[nameAt] ?? '';
      const first = cells[0] ?? '';
      if (headsTotals(name) || (first !== name && headsTotals(first)))
        return attention(record, line, [problem('intake.total', titles[nameAt] ?? 'row', name === '' ? first : name)]);
      if (gathered.problems.length > 0) gathered.problems = [];
      if (gathered.notes.length > 0) gathered.notes = [];
      for (const { at, to, step } of steps) {
        const cell = cells[at];
        if (cell === undefined || cell === '') {
          out[to] = '';
          continue;
        }
        out[to] = step(returned === undefined ? cell : unguarded(cell), gathered as Gathered);
      }
      const read = reader.read(out, line);
      if (gathered.problems.length > 0 || !read.ok) {
        if (gathered.problems.length > 0 && repeats(cells, titles)) return attention(record, line, [repeated(cells)]);
        const told = new Set(gathered.problems.map(({ field }) => field));
        const more = read.ok
          ? []
          : read.problems.map((each) => ({ ...each, field: titleOf.get(each.field) ?? each.field }));
        return attention(record, line, [...gathered.problems, ...more.filter(({ field }) => !told.has(field))]);
      }
      if (dayAt >= 0 && out[dayAt] === '')
        gathered.notes.push({ title: columns[dayAt]?.title ?? '', kind: 'no-day', cell: '' });
      const { notes } = gathered;
      return notes.length === 0
        ? { state: 'ready', line, place: read.place }
        : { state: 'ready', line, place: read.place, notes };
    },
  };
}

/** A row of other width whose cells still stand where they belong. */
function fits(cells: readonly string[], width: number, ragged: boolean): boolean {
  if (cells.length < width) return ragged;
  for (let at = width; at < cells.length; at++) if (cells[at]?.trim() !== '') return false;
  return true;
}

const lineOf = (cell: string | undefined, line: number): number => {
  const first = Number(cell);
  return cell !== undefined && cell !== '' && Number.isInteger(first) && first > 0 ? first : line;
};

const repeated = (cells: readonly string[]): Problem => problem('intake.header-again', 'row', cells[0] ?? '');

/** Whether a row holds the titles once more, as a new page does. */
function repeats(cells: readonly string[], titles: readonly string[]): boolean {
  let [full, same] = [0, 0];
  for (const [at, cell] of cells.entries()) {
    const text = cell.trim().toLowerCase();
    if (text === '') continue;
    full += 1;
    if ((titles[at] ?? '').toLowerCase().includes(text)) same += 1;
  }
  return full > 1 && same >= full * 0.8;
}

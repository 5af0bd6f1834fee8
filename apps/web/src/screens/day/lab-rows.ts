import type { Problem } from '@sorrel/engine/document';
import { type Proposal, readSaidRows, type SaidRow } from '@sorrel/intake';
import type { Entry } from '../../data/garden-store.ts';
import { add } from '../../data/write.ts';
import { label } from '../../words/label.ts';
import { checkTest } from '../test/check-test.ts';
import type { TestEntry } from '../test/draft.ts';
import { rowEntry } from '../test/row-entry.ts';
import type { Sample } from './day-model.ts';
import { isCode } from './sample-draft.ts';

/** A row of the laboratory's file beside the samples of the day. */
export type LabRow = {
  readonly line: number;
  /** The code as the row has it. */
  readonly code: string;
  /** As they came, for the list of rows to mend. */
  readonly cells: readonly string[];
} & (
  | { readonly fate: 'adds'; readonly sample: Sample; readonly test: TestEntry }
  /** The very same test is in already. */
  | { readonly fate: 'there'; readonly sample: Sample }
  /** Nobody has checked this code in. */
  | { readonly fate: 'unknown'; readonly test: TestEntry }
  | { readonly fate: 'mend'; readonly problems: readonly Problem[] }
);

/**
 * Reads a laboratory's file and lays each row beside the sample of its code. Every row has one fate.
 *
 * @param proposal without open questions
 */
export async function labRows(
  bytes: Uint8Array,
  proposal: Proposal,
  samples: readonly Sample[],
  defaults: { readonly today: string; readonly region?: string },
): Promise<readonly LabRow[]> {
  const byCode = new Map(samples.map((sample) => [sample.code.toLowerCase(), sample]));
  const seen = new Map<string, number>();
  const { columns } = proposal;
  const codeAt = titlesOf(proposal).indexOf(columns.find(({ means }) => means === 'place')?.title ?? '');
  const rows: LabRow[] = [];
  for await (const row of readSaidRows(bytes, proposal, defaults))
    rows.push(rowOf(row, row.cells[codeAt]?.trim() ?? '', byCode, seen, defaults.today));
  return rows;
}

/** The sender's own titles, without what an earlier list of rows to mend added. */
export const titlesOf = ({ header, returned }: Proposal): readonly string[] =>
  header.titles.filter((_, at) => !(returned?.added.includes(at) ?? false));

function rowOf(
  { outcome, cells, said }: SaidRow,
  code: string,
  byCode: ReadonlyMap<string, Sample>,
  seen: Map<string, number>,
  today: string,
): LabRow {
  const { line } = outcome;
  if (outcome.state === 'attention') return { line, code, cells, fate: 'mend', problems: outcome.problems };
  const { test } = rowEntry(said.columns, saidOf(said), today);
  const wrong = (message: string, fix: string): LabRow => ({
    line,
    code,
    cells,
    fate: 'mend',
    problems: [{ code: 'day.row', field: 'code', value: code, message, fix }],
  });
  const before = seen.get(code.toLowerCase());
  if (before !== undefined)
    return wrong(label('web.day-lab-twice', { code, line: before }), label('web.day-lab-twice-fix'));
  seen.set(code.toLowerCase(), line);
  const [fault] = checkTest(test, today);
  if (fault !== undefined) return wrong(fault.message, fault.fix);
  const sample = byCode.get(code.toLowerCase());
  if (sample === undefined) return { line, code, cells, fate: 'unknown', test };
  const text = JSON.stringify(sorted(test));
  return sample.tests.some(({ content }) => JSON.stringify(sorted(content)) === text)
    ? { line, code, cells, fate: 'there', sample }
    : { line, code, cells, fate: 'adds', sample, test };
}

/** Columns that say how another is to be understood, and mean nothing beside an empty cell of it. */
const ABOUT: Readonly<Record<string, string>> = {
  ph_method: 'ph',
  buffer: 'buffer_ph',
  printed_depth: 'printed_rate',
  printed_target: 'printed_rate',
  printed_cce: 'printed_rate',
};

/** What holds for the whole file goes with each row only where it has something to hold for. */
const saidOf = ({ columns, cells }: SaidRow['said']): readonly string[] =>
  cells.map((cell, at) => {
    const about = ABOUT[columns[at] ?? ''];
    return about !== undefined && (cells[columns.indexOf(about)] ?? '') === '' ? '' : cell;
  });

/** The same whatever the order in which it was written. */
const sorted = (value: unknown): unknown =>
  typeof value === 'object' && value !== null && !Array.isArray(value)
    ? Object.fromEntries(
        Object.entries(value)
          .sort(([a], [b]) => (a < b ? -1 : 1))
          .map(([key, each]) => [key, sorted(each)]),
      )
    : value;

/**
 * What taking in these rows writes.
 *
 * @param unknownToo codes that nobody checked in become samples
 */
export function labEntries(garden: string, rows: readonly LabRow[], unknownToo: boolean): readonly Entry[] {
  return rows.flatMap((row): Entry[] => {
    if (row.fate === 'adds') return [add(garden, 'test', row.test, row.sample.id)];
    if (row.fate !== 'unknown' || !unknownToo || !isCode(row.code)) return [];
    const place = add(garden, 'place', { name: row.code, sample: { code: row.code } });
    return [place, add(garden, 'test', row.test, place.id)];
  });
}

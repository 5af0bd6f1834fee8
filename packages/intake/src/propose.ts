import { type Problem, rowReader } from '@sorrel/engine/document';
import { type DecimalEvidence, decimalEvidence, decimalOf, evidenceOf, samplesOf } from './columns/evidence.ts';
import { isFigure, meaningRow } from './columns/meanings.ts';
import { type Guess, recognise } from './columns/recognise.ts';
import { encodingOf } from './decode/encoding.ts';
import { textReader } from './decode/text.ts';
import { delimiterOf } from './dialect/delimiter.ts';
import { findHeader, type Header, PART } from './dialect/header.ts';
import { lineEndOf, withFeeds } from './dialect/line-end.ts';
import { columnOf, settle } from './mapping/draft.ts';
import { matchSender } from './mapping/match.ts';
import type { SenderMapping } from './mapping/schema.ts';
import { problem } from './problem.ts';
import type { FileForm, Proposal } from './proposal.ts';
import { splitter, type TableRecord } from './records/split.ts';
import { refreshed } from './refresh.ts';
import { returnedOf } from './rows/returned.ts';
import { knownWord } from './rows/steps.ts';
import { isOldWorkbook, isWorkbook, sheetNames, sheetRows } from './sheet/workbook.ts';

export interface ProposeOptions {
  /** Mappings of senders that are remembered. The one whose columns are in the file is taken. */
  readonly senders?: readonly SenderMapping[];
  /** False when `bytes` is only the beginning of a text file. Workbooks must be whole. */
  readonly whole?: boolean;
  /** Sheet of a workbook; else the one with most known titles. */
  readonly sheet?: string;
  /** Told beforehand by who has seen the whole file. */
  readonly encoding?: 'utf-8' | 'windows-1252';
}

export type Proposed =
  | { readonly ok: true; readonly proposal: Proposal }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Letters of a text and rows of a workbook that are looked at. */
const LETTERS = 1 << 20;
const ROWS = 2000;

/**
 * Looks at a file and proposes how to read it: letters, cells, header, what each column means and in which unit, and what
 * has to be asked. Nothing is read from it yet.
 *
 * @param bytes the file, or its beginning (`whole: false`)
 * @param name its name, as the person knows it
 * @returns the proposal, or a problem when there is no table in it
 */
export async function propose(bytes: Uint8Array, name: string, options: ProposeOptions = {}): Promise<Proposed> {
  if (isOldWorkbook(bytes)) return unopened(name, 'it is in the older XLS form');
  if (!isWorkbook(bytes)) return proposeText(bytes, name, options);
  try {
    return await proposeWorkbook(bytes, name, options);
  } catch (error) {
    return unopened(name, error instanceof Error ? error.message : String(error));
  }
}

const unopened = (name: string, reason: string): Proposed => ({
  ok: false,
  problems: [problem('intake.workbook', 'file', name, { reason })],
});

function proposeText(bytes: Uint8Array, name: string, options: ProposeOptions): Proposed {
  const { whole = true } = options;
  const found = encodingOf(bytes, whole);
  const encoding =
    found.by === 'fits' || found.by === 'nothing-else' ? (options.encoding ?? found.encoding) : found.encoding;
  const reader = textReader(encoding);
  const head = bytes.subarray(0, LETTERS);
  const raw = reader.push(head) + (whole && head.length === bytes.length ? reader.end() : '');
  const lineEnd = lineEndOf(raw);
  const text = withFeeds(raw, lineEnd);
  const complete = whole && head.length === bytes.length;
  const lines = complete ? text : text.slice(0, text.lastIndexOf('\n') + 1);
  const delimiter = delimiterOf(lines);
  const split = splitter(delimiter);
  const records = [...split.push(lines), ...(complete ? split.end() : [])];
  return proposalOf(name, { kind: 'text', encoding, delimiter, lineEnd }, records, options);
}

async function proposeWorkbook(bytes: Uint8Array, name: string, options: ProposeOptions): Promise<Proposed> {
  const sheets = await sheetNames(bytes);
  const wanted = options.sheet === undefined ? sheets : sheets.filter((sheet) => sheet === options.sheet);
  let best: Proposed | undefined;
  let most = -1;
  for (const sheet of wanted) {
    const records: TableRecord[] = [];
    for await (const record of sheetRows(bytes, sheet, ROWS)) records.push(record);
    const proposed = proposalOf(name, { kind: 'workbook', sheet, sheets }, records, options);
    if (!proposed.ok) continue;
    const known = proposed.proposal.columns.filter((column) => column.used).length;
    if (known > most) {
      most = known;
      best = proposed;
    }
  }
  return best ?? { ok: false, problems: [problem('intake.empty', 'file', name)] };
}

function proposalOf(name: string, form: FileForm, records: readonly TableRecord[], options: ProposeOptions): Proposed {
  const header = spread(findHeader(records));
  const after = Math.max(0, ...header.lines, ...header.above);
  const rows = records.filter(({ line }) => line > after);
  if (header.titles.length === 0 || (rows.length === 0 && header.lines.length === 0))
    return { ok: false, problems: [problem('intake.empty', 'file', name)] };
  const returned = returnedOf(header.titles);
  const cells = rows.map((row) => row.cells);
  const samples = header.titles.map((_, at) => samplesOf(cells, at));
  const decimals = decimalsOf(header, samples);
  const sign = decimalOf(decimals);
  const evidence = samples.map((column) => evidenceOf(column, sign));
  const match = matchSender(
    header.titles.filter((_, at) => !returned?.added.includes(at)),
    options.senders ?? [],
  );
  const remembered = new Map(
    match?.columns.flatMap((column) => (column === undefined ? [] : [[column.title.toLowerCase(), column]])),
  );
  const guesses = settle(
    header.parts.map((parts, at): Guess => {
      if (returned?.added.includes(at)) return { means: 'remarks', confidence: 1, reason: 'not-needed' };
      const known = remembered.get(header.titles[at]?.toLowerCase() ?? '');
      if (known !== undefined) {
        const { title: _, ...rest } = known;
        return { ...rest, confidence: 1, reason: 'remembered' } as Guess;
      }
      return recognise(parts, evidence[at] as (typeof evidence)[number], canRead);
    }),
  );
  const dates = guesses.findIndex((guess) => meaningRow(guess.means)?.quantity === 'date');
  const order = dates < 0 ? undefined : evidence[dates]?.dates;
  const clash = match?.mapping.decimal !== undefined && sign !== undefined && match.mapping.decimal !== sign;
  const decimal = match?.mapping.decimal === undefined ? sign : clash ? undefined : match.mapping.decimal;
  const [only] = order?.possible ?? [];
  const told = order?.possible.length === 1 && only !== 'spreadsheet-day' ? only : undefined;
  const said = match?.mapping.dates;
  const kept =
    said !== undefined && (order === undefined || order.possible.includes(said) || !order.needed) ? said : told;
  const mapping: SenderMapping = {
    ...(match?.mapping ?? { mapping: 1 }),
    columns: guesses.map((guess, at) => columnOf(header.titles[at] ?? '', guess)),
  };
  delete mapping.decimal;
  delete mapping.dates;
  if (decimal !== undefined) mapping.decimal = decimal;
  if (kept !== undefined && (order?.needed ?? true)) mapping.dates = kept;
  return {
    ok: true,
    proposal: refreshed({
      name,
      form,
      header,
      mapping,
      ...(match === undefined ? {} : { remembered: { sender: match.mapping.sender, gone: match.gone } }),
      ...(returned === undefined ? {} : { returned }),
      preview: rows.slice(0, 10),
      seen: { titles: header.titles, guesses, evidence, decimals },
    }),
  };
}

/** Titles of a returned list hold several rows in one: they are taken apart again. */
const spread = (header: Header): Header => ({
  ...header,
  parts: header.parts.map((parts) => parts.flatMap((part) => part.split(PART))),
});

/** What the columns of figures tell of the decimal sign; days and names are not asked. */
function decimalsOf(header: Header, samples: readonly (readonly string[])[]): DecimalEvidence {
  const asked = samples.filter((cells, at) => {
    const guess = recognise(header.parts[at] ?? [], evidenceOf(cells, undefined), () => true);
    return isFigure(guess.means) || meaningRow(guess.means)?.quantity === 'other';
  });
  return decimalEvidence(asked.length > 0 ? asked : samples);
}

const readers = new Map<string, (cell: string) => boolean>();

/** Asks the engine whether it understands a word in one of its own columns. */
function canRead(means: string, cell: string): boolean {
  const to = meaningRow(means)?.column;
  if (to === undefined) return true;
  let known = readers.get(means);
  if (known === undefined) {
    const reader = rowReader(['ph', to], { today: '2000-01-01' });
    known = (text) => {
      const read = reader.read(['6', text], 1);
      return read.ok || !read.problems.some((each) => each.field === to);
    };
    readers.set(means, known);
  }
  const word = meaningRow(means)?.quantity === 'word' ? knownWord(means, cell) : cell.replace(/\s*[,/&+]\s*/g, '; ');
  return word !== undefined && known(word);
}

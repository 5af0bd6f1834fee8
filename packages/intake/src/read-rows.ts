import type { RowDefaults } from '@sorrel/engine/document';
import { textReader } from './decode/text.ts';
import { withFeeds } from './dialect/line-end.ts';
import type { Proposal } from './proposal.ts';
import { splitter, type TableRecord } from './records/split.ts';
import { mappedReader, type RowOutcome, type SaidCells } from './rows/reader.ts';
import type { RowsSetup } from './rows/setup.ts';
import { setupOf } from './rows/setup-of.ts';
import { sheetRows } from './sheet/workbook.ts';

/** Bytes decoded at a time, so that the whole text never stands in memory at once. */
const PIECE = 1 << 16;

/**
 * What a reader of rows needs of a settled proposal. Plain data, for another thread.
 *
 * @throws RangeError while questions are open: rows would have to be guessed
 */
export function rowsSetup(proposal: Proposal): RowsSetup {
  const [open] = proposal.questions;
  if (open !== undefined) throw new RangeError(`Still to be answered: ${open.id}`);
  const { form, header, mapping, returned } = proposal;
  return setupOf(mapping, {
    titles: header.titles,
    delimiter: form.kind === 'text' ? form.delimiter : ',',
    after: Math.max(0, ...header.lines, ...header.above),
    ragged: form.kind === 'workbook',
    returned,
  });
}

/**
 * Reads every row of a file by a settled proposal, in order. Each row that holds anything comes out exactly once, ready
 * or to be mended; header lines and empty rows do not count as rows.
 *
 * @param bytes the whole file
 * @param proposal without open questions
 * @param defaults today, and the region when neither file nor mapping names one
 * @throws RangeError while questions are open
 */
export async function* readRows(
  bytes: Uint8Array,
  proposal: Proposal,
  defaults: RowDefaults,
): AsyncGenerator<RowOutcome> {
  const reader = mappedReader(rowsSetup(proposal), defaults);
  for await (const records of recordsIn(bytes, proposal))
    for (const record of records) {
      const outcome = reader.read(record);
      if (outcome !== undefined) yield outcome;
    }
}

/** A row with what stood in it, for who keeps the test itself. */
export interface SaidRow {
  readonly outcome: RowOutcome;
  /** As the sender wrote them. */
  readonly cells: readonly string[];
  /** The same in the notation of a table of soil tests; of no use for a row to be mended. */
  readonly said: SaidCells;
}

/** As `readRows`, with the text of each row. */
export async function* readSaidRows(
  bytes: Uint8Array,
  proposal: Proposal,
  defaults: RowDefaults,
): AsyncGenerator<SaidRow> {
  const reader = mappedReader(rowsSetup(proposal), defaults);
  for await (const records of recordsIn(bytes, proposal))
    for (const record of records) {
      const outcome = reader.read(record);
      if (outcome !== undefined) yield { outcome, cells: reader.own(record), said: reader.said() };
    }
}

async function* recordsIn(bytes: Uint8Array, { form }: Proposal): AsyncGenerator<readonly TableRecord[]> {
  if (form.kind === 'workbook') {
    for await (const record of sheetRows(bytes, form.sheet)) yield [record];
    return;
  }
  const text = textReader(form.encoding);
  const split = splitter(form.delimiter);
  for (let at = 0; at < bytes.length; at += PIECE)
    yield split.push(withFeeds(text.push(bytes.subarray(at, at + PIECE)), form.lineEnd));
  yield split.push(withFeeds(text.end(), form.lineEnd));
  yield split.end();
}

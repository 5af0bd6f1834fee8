import { isUtf8 } from 'node:buffer';
import { createReadStream } from 'node:fs';
import { isWorkbook, type Proposal, sheetRows, textReader, withFeeds } from '@sorrel/intake';
import { cutter, type Run, type TableRecord } from '@sorrel/intake/rows';

/** The file is read in pieces of this many bytes. */
const PIECE = 1 << 18;
/** Bytes at the beginning that a proposal is made from. */
const HEAD = 1 << 20;
/** Rows of a workbook are handed on in batches of so many. */
const BATCH = 1000;
const LINE_FEED = 10;

/** A file that may be longer than memory. */
export interface Source {
  /** Its beginning, or all of it. */
  readonly head: Uint8Array;
  readonly whole: boolean;
  /** Told from all of it, when it can be read twice. */
  readonly encoding?: 'utf-8' | 'windows-1252';
  /** Pieces of the whole, from the first byte. */
  pieces(): AsyncIterable<Uint8Array>;
}

/** Opens a file, or what is piped in for `-`. Workbooks are read whole: their list of contents is at the end. */
export async function open(file: string): Promise<Source> {
  const stream: AsyncIterable<Uint8Array> =
    file === '-' ? process.stdin : createReadStream(file, { highWaterMark: PIECE });
  const iterator = stream[Symbol.asyncIterator]();
  const begun: Uint8Array[] = [];
  let size = 0;
  let done = false;
  while (size < HEAD || isWorkbook(begun[0] ?? new Uint8Array())) {
    const next = await iterator.next();
    if (next.done) {
      done = true;
      break;
    }
    begun.push(next.value);
    size += next.value.length;
  }
  const head = Buffer.concat(begun);
  const encoding = done || file === '-' ? undefined : await encodingOfAll(file);
  return {
    head,
    whole: done,
    ...(encoding === undefined ? {} : { encoding }),
    async *pieces() {
      yield* begun;
      if (!done) yield* { [Symbol.asyncIterator]: () => iterator };
    },
  };
}

/** Whether every line of a long file is UTF-8: a letter far down can be the first that is not. Lines are never cut. */
async function encodingOfAll(file: string): Promise<'utf-8' | 'windows-1252'> {
  let rest: Uint8Array = new Uint8Array();
  for await (const piece of createReadStream(file, { highWaterMark: PIECE }) as AsyncIterable<Uint8Array>) {
    const end = piece.lastIndexOf(LINE_FEED) + 1;
    if (end === 0) rest = Buffer.concat([rest, piece]);
    else {
      if (!isUtf8(Buffer.concat([rest, piece.subarray(0, end)]))) return 'windows-1252';
      rest = piece.subarray(end);
    }
  }
  return isUtf8(rest) ? 'utf-8' : 'windows-1252';
}

/** The records of a file, in runs that a thread can take. */
export async function* runsOf(source: Source, { form }: Proposal): AsyncGenerator<Run> {
  if (form.kind === 'workbook') {
    let rows: TableRecord[] = [];
    for await (const record of sheetRows(source.head, form.sheet)) {
      rows.push(record);
      if (rows.length < BATCH) continue;
      yield { rows, records: rows.length };
      rows = [];
    }
    yield { rows, records: rows.length };
    return;
  }
  const text = textReader(form.encoding);
  const cut = cutter(form.delimiter);
  for await (const piece of source.pieces()) yield* cut.push(withFeeds(text.push(piece), form.lineEnd));
  yield* cut.push(withFeeds(text.end(), form.lineEnd));
  yield* cut.end();
}

import { once } from 'node:events';
import { createReadStream } from 'node:fs';
import { type RowReader, readGarden, rowReader } from '@sorrel/engine/document';
import type { Product } from '@sorrel/engine/materials';
import { recommend, type Settings } from '@sorrel/engine/plan';
import type { UnitSystem } from '@sorrel/engine/units';
import { badRows } from '../bad-rows.ts';
import { type CsvRecord, csvSplitter } from '../csv.ts';
import { exit, Stop } from '../exit.ts';
import { nameOf, reasonOf } from '../input.ts';
import { oneFile, read, showing, todayOf, unitsOf } from '../options.ts';
import { csvLine, planColumns, planRow } from '../plan-row.ts';
import { words } from '../words.ts';

const text = { type: 'string' } as const;
const options = {
  ...showing,
  bad: text,
  'as-of': text,
  region: text,
  climate: text,
  material: text,
  cce: text,
} as const;

/** Output is gathered to pieces of about this many letters, so that there are few writes. */
const PIECE = 1 << 16;

/** `sorrel table TESTS.csv`: a plan for each row, in order, while the file is being read. */
export async function run(args: readonly string[]): Promise<number> {
  const { values, positionals } = read(args, options, 'table');
  const file = oneFile(positionals, 'table');
  const system: UnitSystem = unitsOf(values.units, 'table') ?? 'metric';
  const today = todayOf(values['as-of'], 'table');
  const { settings, products } = surroundings(values, today);
  const bad = badRows(values.bad);
  const splitter = csvSplitter();
  let reader: RowReader | undefined;
  let rows = 0;
  let piece = '';
  const take = (record: CsvRecord): void => {
    if (reader === undefined) {
      reader = rowReader(record.cells, { today, ...(values.region === undefined ? {} : { region: values.region }) });
      for (const each of reader.problems) process.stderr.write(`${each.message} ${each.fix}\n`);
      if (!values.json) piece = `${planColumns.join(',')}\r\n`;
      return;
    }
    rows += 1;
    const result = reader.read(record.cells, rows);
    if (!result.ok) {
      bad.add(record.line, result.problems);
      return;
    }
    const row = planRow(record.line, result.place, recommend(result.place, products, settings), system);
    piece += values.json ? `${JSON.stringify(row)}\n` : `${csvLine(row)}\r\n`;
  };
  const flush = async (): Promise<void> => {
    if (piece === '') return;
    const full = !process.stdout.write(piece);
    piece = '';
    if (full) await once(process.stdout, 'drain');
  };

  try {
    const input =
      file === '-'
        ? process.stdin.setEncoding('utf8')
        : createReadStream(file, { encoding: 'utf8', highWaterMark: PIECE * 4 });
    for await (const chunk of input) {
      for (const record of splitter.push(chunk as string)) {
        take(record);
        if (piece.length > PIECE) await flush();
      }
    }
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === undefined) throw error;
    throw new Stop(exit.nothing, words.cannotRead(nameOf(file), reasonOf(error)));
  }
  for (const record of splitter.end()) take(record);
  await flush();
  const list = await bad.end();
  if (reader === undefined) throw new Stop(exit.nothing, words.emptyTable);
  process.stderr.write(`${words.tableDone(rows, rows - bad.count, bad.count)}\n${list === '' ? '' : `${list}\n`}`);
  if (rows === bad.count) return exit.nothing;
  return bad.count > 0 || reader.problems.length > 0 ? exit.partly : exit.fine;
}

/** Settings and materials from the options, read like the head of a garden document so that the same messages come. */
function surroundings(
  values: {
    readonly climate?: string | undefined;
    readonly region?: string | undefined;
    readonly material?: string | undefined;
    readonly cce?: string | undefined;
  },
  today: string,
): { settings: Settings; products: readonly Product[] } {
  const label = values.cce === undefined ? {} : { cce: values.cce };
  const { garden, problems } = readGarden(
    {
      garden: words.oneTable,
      places: [{ name: words.oneTable }],
      ...(values.climate === undefined ? {} : { climate: values.climate }),
      ...(values.region === undefined ? {} : { region: values.region }),
      ...(values.material === undefined ? {} : { materials: [{ material: values.material, ...label }] }),
    },
    { today },
  );
  const [problem] = problems;
  if (problem !== undefined) throw new Stop(exit.usage, words.usage('table', `${problem.message} ${problem.fix}`));
  return { settings: garden.settings, products: garden.products };
}

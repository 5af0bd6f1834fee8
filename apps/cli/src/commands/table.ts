import { once } from 'node:events';
import { createReadStream, statSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { readGarden } from '@sorrel/engine/document';
import type { Product } from '@sorrel/engine/materials';
import type { Settings } from '@sorrel/engine/plan';
import type { UnitSystem } from '@sorrel/engine/units';
import { cutter, type Run, recordsOf } from '@sorrel/intake/rows';
import { badRows } from '../bad-rows.ts';
import { exit, Stop } from '../exit.ts';
import { nameOf, reasonOf } from '../input.ts';
import { oneFile, read, showing, todayOf, unitsOf } from '../options.ts';
import { planColumns } from '../plan-row.ts';
import { createPlanner, DELIMITER, type PlannedRows, type TableSetup } from '../table/planner.ts';
import { alone, type Threads, together } from '../table/threads.ts';
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
  threads: text,
} as const;

/** The file is read in pieces of this many bytes. */
const PIECE = 1 << 18;
/** Rows are handed on in batches of about this many letters: over a thousand rows. */
const BATCH = 1 << 18;
/** Smaller files are planned on one thread. */
const LARGE = 1 << 21;
const MOST_THREADS = 8;

/** `sorrel table TESTS.csv`: a plan for each row, in order, while the file is being read. */
export async function run(args: readonly string[]): Promise<number> {
  const { values, positionals } = read(args, options, 'table');
  const file = oneFile(positionals, 'table');
  const system: UnitSystem = unitsOf(values.units, 'table') ?? 'metric';
  const today = todayOf(values['as-of'], 'table');
  const { settings, products } = surroundings(values, today);
  const bad = badRows(values.bad);
  const jobs = threadsOf(values.threads);
  let threads: Threads | undefined;
  let rows = 0;
  let strange = 0;
  let batch: Run[] = [];
  let letters = 0;
  const underWay: Promise<PlannedRows>[] = [];
  const write = async (): Promise<void> => {
    const planned = await underWay.shift();
    if (planned === undefined) return;
    for (const { line, problems } of planned.bad) bad.add(line, problems);
    if (planned.bytes.length > 0 && !process.stdout.write(planned.bytes)) await once(process.stdout, 'drain');
  };
  const send = async (): Promise<void> => {
    if (threads === undefined || batch.length === 0) return;
    underWay.push(threads.plan(batch, rows + 1));
    for (const run of batch) rows += run.records;
    batch = [];
    letters = 0;
    while (underWay.length >= threads.width) await write();
  };
  const begin = (header: readonly string[]): void => {
    const setup: TableSetup = {
      header,
      today,
      settings,
      products,
      system,
      json: values.json === true,
      ...(values.region === undefined ? {} : { region: values.region }),
    };
    const { problems } = createPlanner(setup);
    strange = problems.length;
    for (const each of problems) process.stderr.write(`${each.message} ${each.fix}\n`);
    threads = jobs > 1 && isLarge(file) ? together(setup, jobs) : alone(setup);
    if (!values.json) process.stdout.write(`${planColumns.join(',')}\r\n`);
  };
  const take = async (run: Run): Promise<void> => {
    let rest: Run | undefined = run;
    if (threads === undefined) {
      const { header, after } = headerOf(run);
      begin(header);
      rest = after;
    }
    if (rest === undefined) return;
    batch.push(rest);
    letters += 'text' in rest ? rest.text.length : 200;
    if (letters >= BATCH) await send();
  };

  const cut = cutter(DELIMITER);
  try {
    const input =
      file === '-'
        ? process.stdin.setEncoding('utf8')
        : createReadStream(file, { encoding: 'utf8', highWaterMark: PIECE });
    let begun = false;
    for await (const chunk of input) {
      const text = chunk as string;
      for (const run of cut.push(begun ? text : withoutMark(text))) await take(run);
      begun = true;
    }
    for (const run of cut.end()) await take(run);
    await send();
    while (underWay.length > 0) await write();
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === undefined) throw error;
    throw new Stop(exit.nothing, words.cannotRead(nameOf(file), reasonOf(error)));
  } finally {
    await threads?.close();
  }
  const list = await bad.end();
  if (threads === undefined) throw new Stop(exit.nothing, words.emptyTable);
  process.stderr.write(`${words.tableDone(rows, rows - bad.count, bad.count)}\n${list === '' ? '' : `${list}\n`}`);
  if (rows === bad.count) return exit.nothing;
  return bad.count > 0 || strange > 0 ? exit.partly : exit.fine;
}

/** The byte order mark that some programs put before a text. */
const withoutMark = (text: string): string => (text.startsWith('\ufeff') ? text.slice(1) : text);

/** The first record of a run, and the run without it. */
function headerOf(run: Run): { readonly header: readonly string[]; readonly after: Run | undefined } {
  const [first, second] = recordsOf(run, DELIMITER);
  const header = first?.cells ?? [];
  if (second === undefined || 'rows' in run) return { header, after: undefined };
  // Lines before the second record, so that its text can be cut off where it starts.
  let at = 0;
  for (let line = run.line; line < second.line; line++) at = run.text.indexOf('\n', at) + 1;
  return { header, after: { text: run.text.slice(at), line: second.line, records: run.records - 1 } };
}

/** A file that takes long enough for other threads to be worth starting. */
export function isLarge(file: string): boolean {
  if (file === '-') return true;
  try {
    return statSync(file).size >= LARGE;
  } catch {
    return false;
  }
}

export function threadsOf(typed: string | undefined): number {
  if (typed === undefined) return Math.min(availableParallelism(), MOST_THREADS);
  const count = Number(typed);
  if (!Number.isInteger(count) || count < 1 || count > 64)
    throw new Stop(exit.usage, words.usage('table', words.threads(typed)));
  return count;
}

/** Settings and materials from the options, read like the head of a garden document so that the same messages come. */
export function surroundings(
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

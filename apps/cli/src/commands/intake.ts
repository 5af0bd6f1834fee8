import { once } from 'node:events';
import { createWriteStream } from 'node:fs';
import { type Proposal, propose, rowsSetup } from '@sorrel/intake';
import { mendHeader, type Run } from '@sorrel/intake/rows';
import { exit, Stop } from '../exit.ts';
import { nameOf, reasonOf } from '../input.ts';
import { type IntakeSetup, intakePlanner, type TakenIn } from '../intake/planner.ts';
import { keepSender, readSender } from '../intake/sender.ts';
import { settled } from '../intake/settle.ts';
import { proposalText, questionsText } from '../intake/show.ts';
import { open, runsOf, type Source } from '../intake/source.ts';
import { summary } from '../intake/summary.ts';
import { intakeWords } from '../intake-words.ts';
import { oneFile, read, showing, todayOf, unitsOf } from '../options.ts';
import { planColumns } from '../plan-row.ts';
import { type Crew, crew } from '../table/threads.ts';
import { words } from '../words.ts';
import { isLarge, surroundings, threadsOf } from './table.ts';

const text = { type: 'string' } as const;
const texts = { type: 'string', multiple: true } as const;
const flag = { type: 'boolean' } as const;
const options = {
  ...showing,
  answer: texts,
  column: texts,
  suggested: flag,
  sender: text,
  name: text,
  laboratory: text,
  sheet: text,
  plans: text,
  mend: text,
  'as-of': text,
  region: text,
  climate: text,
  material: text,
  cce: text,
  threads: text,
} as const;

/** Rows are handed on in batches of about this many letters. */
const BATCH = 1 << 18;

/** `sorrel intake FILE`: what a laboratory's file seems to hold, and a plan or a reason for each of its rows. */
export async function run(args: readonly string[]): Promise<number> {
  const { values, positionals } = read(args, options, 'intake');
  const file = oneFile(positionals, 'intake');
  const today = todayOf(values['as-of'], 'intake');
  const system = unitsOf(values.units, 'intake') ?? 'metric';
  const remembered = readSender(values.sender);
  const source = await opened(file);
  const proposal = settled(await proposed(source, file, values.sheet, remembered), {
    answers: values.answer ?? [],
    columns: values.column ?? [],
    suggested: values.suggested === true,
  });
  const closed = proposal.questions.length === 0;
  if (closed && values.sender !== undefined) {
    keepSender(values.sender, {
      ...proposal.mapping,
      ...(values.name === undefined ? {} : { sender: values.name }),
      ...(values.laboratory === undefined ? {} : { laboratory: values.laboratory }),
    });
    process.stderr.write(`${intakeWords.kept(values.sender)}\n`);
  }
  if (values.plans === undefined) {
    const { seen: _seen, ...shown } = proposal;
    process.stdout.write(values.json ? `${JSON.stringify(shown, null, 2)}\n` : proposalText(proposal));
    return closed ? exit.fine : exit.partly;
  }
  if (!closed) {
    process.stderr.write(`${questionsText(proposal)}\n${intakeWords.openStill}\n`);
    return exit.nothing;
  }
  const { settings, products } = surroundings(values, today);
  const rows = rowsSetup(proposal);
  const laboratory: [string, string][] = values.laboratory === undefined ? [] : [['laboratory', values.laboratory]];
  const setup: IntakeSetup = {
    rows: { ...rows, same: [...rows.same.filter(([to]) => to !== laboratory[0]?.[0]), ...laboratory] },
    today,
    settings,
    products,
    system,
    json: values.json === true,
    ...(values.region === undefined ? {} : { region: values.region }),
  };
  const jobs = isLarge(file) ? threadsOf(values.threads) : 1;
  const team: Crew<readonly Run[], TakenIn> = jobs > 1 ? crew('intake-worker.mjs', setup, jobs) : alone(setup);
  const plans = output(values.plans);
  const mend = values.mend === undefined ? undefined : output(values.mend);
  const told = summary();
  const underWay: Promise<TakenIn>[] = [];
  const write = async (): Promise<void> => {
    const done = await underWay.shift();
    if (done === undefined) return;
    told.add(done);
    await plans.write(done.plans);
    await mend?.write(done.mend);
  };
  try {
    if (!values.json) await plans.write(`${planColumns.join(',')}\r\n`);
    const { titles, returned } = rows;
    await mend?.write(mendHeader(titles.filter((_, at) => !returned?.added.includes(at))));
    for await (const batch of batches(source, proposal)) {
      underWay.push(team.do(batch));
      while (underWay.length >= team.width) await write();
    }
    while (underWay.length > 0) await write();
  } finally {
    await team.close();
  }
  await plans.close();
  await mend?.close();
  process.stderr.write(told.text());
  if (told.planned === 0) return exit.nothing;
  return told.attention > 0 ? exit.partly : exit.fine;
}

/** All on this thread: for small files, where starting another takes longer than the work. */
function alone(setup: IntakeSetup): Crew<readonly Run[], TakenIn> {
  const plan = intakePlanner(setup);
  return { width: 1, do: async (runs) => plan(runs), close: async () => {} };
}

async function opened(file: string): Promise<Source> {
  try {
    return await open(file);
  } catch (error) {
    throw new Stop(exit.nothing, words.cannotRead(nameOf(file), reasonOf(error)));
  }
}

async function proposed(
  source: Source,
  file: string,
  sheet: string | undefined,
  remembered: Proposal['mapping'] | undefined,
): Promise<Proposal> {
  const { head, whole, encoding } = source;
  const found = await propose(head, nameOf(file), {
    whole,
    ...(encoding === undefined ? {} : { encoding }),
    ...(sheet === undefined ? {} : { sheet }),
    ...(remembered === undefined ? {} : { senders: [remembered] }),
  });
  if (found.ok) return found.proposal;
  throw new Stop(exit.nothing, found.problems.map((each) => `${nameOf(file)}: ${each.message} ${each.fix}`).join('\n'));
}

async function* batches(source: Source, proposal: Proposal): AsyncGenerator<Run[]> {
  let batch: Run[] = [];
  let letters = 0;
  for await (const run of runsOf(source, proposal)) {
    batch.push(run);
    letters += 'text' in run ? run.text.length : run.records * 200;
    if (letters < BATCH) continue;
    yield batch;
    batch = [];
    letters = 0;
  }
  if (batch.length > 0) yield batch;
}

/** A file to write, or what is printed for `-`; waits when the reader is slower. */
function output(file: string) {
  const stream = file === '-' ? process.stdout : createWriteStream(file);
  let failure: Error | undefined;
  if (file !== '-')
    stream.on('error', (error: Error) => {
      failure = error;
    });
  const check = () => {
    if (failure !== undefined) throw new Stop(exit.nothing, words.cannotWrite(file, reasonOf(failure)));
  };
  return {
    async write(piece: string | Uint8Array): Promise<void> {
      check();
      if (piece.length > 0 && !stream.write(piece) && failure === undefined)
        await Promise.race([once(stream, 'drain'), once(stream, 'close')]);
      check();
    },
    async close(): Promise<void> {
      if (file !== '-' && failure === undefined) {
        stream.end();
        if (!stream.closed) await once(stream, 'close').catch(() => {});
      }
      check();
    },
  };
}

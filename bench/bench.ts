// Measures ratios within this run, prints them and writes docs/bench.md. `--quick` uses fewer rows and writes nothing.
// Names of parts (starting, table, memory, intake, forecast, placing, web, what-if, handouts) run those alone and write
// nothing either.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { availableParallelism, cpus, tmpdir } from 'node:os';
import { join } from 'node:path';
import { bundled } from './bundled.ts';
import { coldStart } from './cold-start.ts';
import { firstView } from './first-view.ts';
import { forecastLines } from './forecast-lines.ts';
import { handoutLines } from './handout-lines.ts';
import { benchIntake } from './intake.ts';
import { tableMemory } from './memory.ts';
import { placingSection } from './placing-section.ts';
import type * as Recommendations from './recommendations.ts';
import { fixed, verdict } from './report.ts';
import { placeReading } from './server.ts';
import { testLines } from './soil-tests.ts';
import { tableCommand } from './table-command.ts';
import { BOUND, rowsOf, THROTTLE, whatIf } from './what-if.ts';

const quick = process.argv.includes('--quick');
const lines: string[] = [];
const say = (line = '') => {
  console.log(line);
  lines.push(line);
};
const thousands = (value: number) => value.toLocaleString('en-US');
const mib = (bytes: number) => fixed(bytes / 2 ** 20, 0);

/** Gives a folder that is gone afterwards. */
async function inFolder<T>(work: (folder: string) => T | Promise<T>): Promise<T> {
  const folder = mkdtempSync(join(tmpdir(), 'sorrel-bench-'));
  try {
    return await work(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const parts: Readonly<Record<string, () => Promise<void>>> = {
  starting: async () => {
    say('## Starting');
    say();
    say('Against Node doing nothing (`node -e 0`); medians of pairs. Bound: 3 times.');
    say();
    say('| command | ours, ms | Node alone, ms | ratio | |');
    say('|---|---:|---:|---:|---|');
    for (const command of [
      '--version',
      'bed --ph 5.4 --texture loam --size "4 ft x 8 ft" --plants tomato --as-of 2026-11-01',
    ]) {
      const args = [...command.matchAll(/"([^"]*)"|(\S+)/g)].map((match) => match[1] ?? match[2] ?? '');
      const { ours, theirs, ratio } = await coldStart(args, quick ? 5 : 21);
      say(`| \`sorrel ${command}\` | ${fixed(ours)} | ${fixed(theirs)} | ${fixed(ratio, 2)} | ${verdict(ratio, 3)} |`);
    }
  },
  table: async () => {
    const { throughput } = await bundled<typeof Recommendations>('recommendations.ts');
    const rows = quick ? 10_000 : 100_000;
    const { parsers, fastest, pair, counts } = await throughput([...testLines(rows)].join(''), quick ? 3 : 5);
    say('## A full recommendation a row');
    say();
    say(
      `${thousands(rows)} mixed soil tests from text to a finished row of the plan, without a forecast, against a bare parse of the same`,
    );
    say(`text by the fastest parser (${fastest}). Bound: 10 times; aim: 3 times.`);
    say();
    say('| bare parse by | ms |');
    say('|---|---:|');
    for (const { name, ms } of parsers) say(`| ${name} | ${fixed(ms, 0)} |`);
    say();
    const command = await inFolder((folder) => tableCommand(rows, folder, quick ? 3 : 5));
    say('| | ours, ms | bare parse, ms | ratio | |');
    say('|---|---:|---:|---:|---|');
    say(
      `| \`sorrel table\` as shipped, whole process against whole process (${availableParallelism()} processors) | ${fixed(command.ours, 0)} | ${fixed(command.theirs, 0)} | **${fixed(command.ratio, 2)}** | ${verdict(command.ratio, 10, 3)} |`,
    );
    say(
      `| on one thread, both warm, in one process | ${fixed(pair.ours, 0)} | ${fixed(pair.theirs, 0)} | **${fixed(pair.ratio, 2)}** | ${verdict(pair.ratio, 10, 3)} |`,
    );
    say();
    say(
      `Of ${thousands(counts.rows)} rows ${thousands(counts.planned)} were good and ${thousands(counts.dosed)} got a dose; the others were`,
    );
    say('reported.');
  },
  memory: async () => {
    say('## Memory');
    say();
    say('Peak of `sorrel table` on a file, which it reads piece by piece: it should not grow with the number of rows.');
    say();
    say('| rows | resident, MiB | heap in use, MiB | seconds |');
    say('|---:|---:|---:|---:|');
    await inFolder((folder) => {
      const peaks = (quick ? [1_000, 10_000] : [10_000, 100_000, 1_000_000]).map((count) => {
        const peak = tableMemory(count, folder);
        say(`| ${thousands(count)} | ${mib(peak.resident)} | ${mib(peak.heap)} | ${fixed(peak.seconds)} |`);
        return peak.resident;
      });
      say();
      say(`The largest file took ${fixed((peaks.at(-1) ?? 0) / (peaks[0] ?? 1), 2)} times the memory of the smallest.`);
    });
  },
  intake: async () => {
    await benchIntake(say, quick);
  },
  forecast: async () => {
    for (const line of await forecastLines(quick)) say(line);
  },
  placing: async () => {
    await placingSection(say, quick);
  },
  web: async () => {
    say('## The web and its server');
    say();
    const view = firstView();
    say(
      `Scripts of the first view, compressed: **${fixed(view.bytes / 1000, 0)} kB** in ${view.files.length} files (bound: 150 kB; ${view.bytes <= 150_000 ? 'within' : '**outside the bound**'}).`,
    );
    say('A garden opened by its own address loads the engine after that, which is not counted here.');
    say();
    const reading = await placeReading(quick ? 2 : 5);
    say(
      `Reading a place: ${thousands(Math.round(reading.ours))} answers a second against ${thousands(Math.round(reading.bare))} of the bare framework with ${reading.size} constant bytes, a share`,
    );
    say(
      `of **${fixed(reading.share, 2)}** (bound: at least 0.5; ${reading.share >= 0.5 ? 'within' : '**outside the bound**'}).`,
    );
  },
  'what-if': async () => {
    say('## A what-if');
    say();
    say(
      `From the key that moves a slider to the painted answer, dose and picture, on a screen of 390 px with the processor of the page slowed ${THROTTLE} times.`,
    );
    say(
      `Bound: ${BOUND} ms for nineteen of twenty moves. The first row is a page with a slider and a figure and nothing else, in the same run.`,
    );
    say();
    const moves = await whatIf(quick ? 10 : 40);
    if (moves === undefined) say('No browser to be had.');
    else {
      say('| bed | moved | moves | p50, ms | p95, ms | |');
      say('|---|---|---:|---:|---:|---|');
      for (const { bed, control, moves: count, p50, p95 } of rowsOf(moves))
        say(
          `| ${bed === 'none' ? 'bare page' : bed} | ${control} | ${count} | ${fixed(p50)} | ${control === 'all' && bed !== 'none' ? `**${fixed(p95)}**` : fixed(p95)} | ${bed === 'none' ? '' : verdict(p95, BOUND)} |`,
        );
    }
  },
  handouts: async () => {
    for (const line of await handoutLines(quick)) say(line);
  },
};

say('# Bench');
say();
say('<!-- Written by `npm run bench`. -->');
say();
say('Each figure is a ratio of two things measured in turns in the same run, so that a slow machine slows both.');
say(`This run: Node ${process.versions.node}, ${cpus().length} × ${cpus()[0]?.model.trim() ?? 'unknown processor'}.`);
say();
const wanted = process.argv.slice(2).filter((word) => !word.startsWith('-'));
const unknown = wanted.filter((name) => !Object.hasOwn(parts, name));
if (unknown.length > 0) {
  console.error(`There is no part ${unknown.join(', ')}. The parts are ${Object.keys(parts).join(', ')}.`);
  process.exit(2);
}
for (const [name, run] of Object.entries(parts)) {
  if (wanted.length > 0 && !wanted.includes(name)) continue;
  await run();
  say();
}
if (!quick && wanted.length === 0)
  writeFileSync(new URL('../docs/bench.md', import.meta.url), `${lines.join('\n').trimEnd()}\n`);
process.exit();

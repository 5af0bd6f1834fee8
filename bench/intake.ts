import { mkdtempSync, rmSync } from 'node:fs';
import { cpus, tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { bundled } from './bundled.ts';
import { intakeCommand, intakeMemory } from './intake-command.ts';
import type * as IntakeRows from './intake-rows.ts';
import { labHeader, labLines } from './lab-files.ts';
import { fixed, verdict } from './report.ts';

const thousands = (value: number) => value.toLocaleString('en-US');
const mib = (bytes: number) => (bytes / 2 ** 20).toFixed(0);
const BOUND = 5;

/** Measures the intake of a laboratory's file and says it line by line. */
export async function benchIntake(say: (line?: string) => void, quick: boolean): Promise<void> {
  const rows = quick ? 10_000 : 100_000;
  const { intakeTimes } = await bundled<typeof IntakeRows>('intake-rows.ts');
  const { reading, planning, planned, rows: read } = await intakeTimes([...labLines(rows)].join(''), quick ? 3 : 5);
  say("## A laboratory's file");
  say();
  say(
    `${thousands(rows)} rows of ${labHeader.length} columns as a laboratory sends them, its own titles and units, against a bare parse of the same`,
  );
  say(`text by udsv. Bound: ${BOUND} times.`);
  say();
  say('| | ours, ms | bare parse, ms | ratio | |');
  say('|---|---:|---:|---:|---|');
  const folder = mkdtempSync(join(tmpdir(), 'sorrel-bench-intake-'));
  try {
    const command = await intakeCommand(rows, folder, quick ? 3 : 5);
    const line = (what: string, { ours, theirs, ratio }: typeof command, bound = true) =>
      say(
        `| ${what} | ${fixed(ours, 0)} | ${fixed(theirs, 0)} | **${fixed(ratio, 2)}** | ${bound ? verdict(ratio, BOUND) : ''} |`,
      );
    line(
      `\`sorrel intake --plans\` as shipped, whole process against whole process (${cpus().length} processors)`,
      command,
    );
    line('rows in, rows of plans out, on one thread, both warm', planning);
    line('of which reading the rows to places and reasons', reading, false);
    say();
    say(
      `Of ${thousands(read)} rows ${thousands(planned)} were planned and ${thousands(read - planned)} listed to be mended.`,
    );
    say();
    say('| rows | resident, MiB | heap in use, MiB | seconds |');
    say('|---:|---:|---:|---:|');
    const peaks = (quick ? [1_000, 10_000] : [100_000, 1_000_000]).map((count) => {
      const peak = intakeMemory(count, folder);
      say(`| ${thousands(count)} | ${mib(peak.resident)} | ${mib(peak.heap)} | ${peak.seconds.toFixed(1)} |`);
      return peak.resident;
    });
    say();
    say(`The larger file took ${fixed((peaks.at(-1) ?? 0) / (peaks[0] ?? 1), 2)} times the memory of the smaller.`);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

// Alone: node scripts/run.mjs bench/intake.ts [--quick]
if (process.argv[1] !== undefined && fileURLToPath(import.meta.url).endsWith(process.argv[1].replace(/^\.\//, '')))
  await benchIntake((line = '') => console.log(line), process.argv.includes('--quick'));

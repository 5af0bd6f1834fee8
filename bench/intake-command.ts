import { spawnSync } from 'node:child_process';
import { readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { writeLabFile } from './lab-files.ts';
import { inTurns, type Pair } from './measure.ts';
import type { Peak } from './memory.ts';

const preload = pathToFileURL(fileURLToPath(new URL('peak.mjs', import.meta.url))).href;
const today = '2026-11-01';

function whole(args: readonly string[], env: NodeJS.ProcessEnv = process.env): void {
  const { status, stderr } = spawnSync(process.execPath, args, {
    env,
    stdio: ['ignore', 'ignore', 'pipe'],
    encoding: 'utf8',
    maxBuffer: 2 ** 30,
  });
  // 1 says that some rows are to be mended, and the generator makes some on purpose.
  if (status !== 0 && status !== 1) throw new Error(`${args.join(' ')} ended with ${status}: ${stderr.slice(0, 500)}`);
}

const intake = (input: string, folder: string): string[] => [
  'apps/cli/dist/sorrel.mjs',
  'intake',
  input,
  '--as-of',
  today,
  '--plans',
  join(folder, 'plans.csv'),
  '--mend',
  join(folder, 'mend.csv'),
];

function clear(folder: string, input: string): void {
  for (const file of [input, join(folder, 'plans.csv'), join(folder, 'mend.csv')]) rmSync(file, { force: true });
}

/** `sorrel intake` as shipped against a process that only reads and parses the same file, in turns. */
export async function intakeCommand(rows: number, folder: string, rounds: number): Promise<Pair> {
  const input = join(folder, `laboratory-${rows}.csv`);
  writeLabFile(input, rows);
  try {
    return await inTurns(
      () => whole(intake(input, folder)),
      () => whole(['bench/parse-only.mjs', input]),
      rounds,
    );
  } finally {
    clear(folder, input);
  }
}

/** Peak memory of the command on a file of so many rows. */
export function intakeMemory(rows: number, folder: string): Peak {
  const input = join(folder, `laboratory-${rows}.csv`);
  const peak = join(folder, 'peak.json');
  writeLabFile(input, rows);
  const started = performance.now();
  whole(['--import', preload, ...intake(input, folder)], { ...process.env, SORREL_PEAK: peak });
  const seconds = (performance.now() - started) / 1000;
  const { resident, heap } = JSON.parse(readFileSync(peak, 'utf8')) as Pick<Peak, 'resident' | 'heap'>;
  clear(folder, input);
  return { rows, resident, heap, seconds };
}

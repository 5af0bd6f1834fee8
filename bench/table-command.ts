import { spawnSync } from 'node:child_process';
import { closeSync, openSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { inTurns, type Pair } from './measure.ts';
import { writeTests } from './soil-tests.ts';

/** Runs a program on a file as a whole process, with its output into a file, as a laboratory would. */
function whole(args: readonly string[], output: string): void {
  const out = openSync(output, 'w');
  const { status, stderr } = spawnSync(process.execPath, args, { stdio: ['ignore', out, 'pipe'], encoding: 'utf8' });
  closeSync(out);
  // 1 says that some rows were bad, and the generator makes some on purpose.
  if (status !== 0 && status !== 1) throw new Error(`${args.join(' ')} ended with ${status}: ${stderr.slice(0, 500)}`);
}

/** `sorrel table` as shipped against a process that only reads and parses the same file, in turns. */
export async function tableCommand(rows: number, folder: string, rounds = 5): Promise<Pair> {
  const input = join(folder, `command-${rows}.csv`);
  const output = join(folder, 'command-out.csv');
  writeTests(input, rows);
  try {
    return await inTurns(
      () => whole(['apps/cli/dist/sorrel.mjs', 'table', input], output),
      () => whole(['bench/parse-only.mjs', input], output),
      rounds,
    );
  } finally {
    rmSync(input);
    rmSync(output, { force: true });
  }
}

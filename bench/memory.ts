import { spawnSync } from 'node:child_process';
import { closeSync, openSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { writeTests } from './soil-tests.ts';

export interface Peak {
  readonly rows: number;
  /** Bytes. */
  readonly resident: number;
  readonly heap: number;
  readonly seconds: number;
}

const preload = pathToFileURL(fileURLToPath(new URL('peak.mjs', import.meta.url))).href;

/** Peak memory of the `table` command on a file of so many soil tests. */
export function tableMemory(rows: number, folder: string): Peak {
  const input = join(folder, `tests-${rows}.csv`);
  const output = join(folder, 'plans.csv');
  const peak = join(folder, 'peak.json');
  writeTests(input, rows);
  const out = openSync(output, 'w');
  const started = performance.now();
  const { status, stderr } = spawnSync(
    process.execPath,
    ['--import', preload, 'apps/cli/dist/sorrel.mjs', 'table', input],
    {
      env: { ...process.env, SORREL_PEAK: peak },
      stdio: ['ignore', out, 'pipe'],
      encoding: 'utf8',
      maxBuffer: 2 ** 30,
    },
  );
  const seconds = (performance.now() - started) / 1000;
  closeSync(out);
  // 1 says that some rows were bad, and the generator makes some on purpose.
  if (status !== 0 && status !== 1) throw new Error(`sorrel table ended with ${status}: ${stderr.slice(0, 500)}`);
  const { resident, heap } = JSON.parse(readFileSync(peak, 'utf8')) as Pick<Peak, 'resident' | 'heap'>;
  rmSync(input);
  rmSync(output);
  return { rows, resident, heap, seconds };
}

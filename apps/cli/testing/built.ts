import { type SpawnSyncReturns, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { buildCli } from '../build.mjs';

export interface Built {
  /** A folder of its own, for files of a test. */
  readonly folder: string;
  run(args: readonly string[], input?: string): SpawnSyncReturns<string>;
  remove(): void;
}

/** The command line, built afresh and run as a gardener runs it. */
export async function built(): Promise<Built> {
  const folder = mkdtempSync(join(tmpdir(), 'sorrel-cli-'));
  await buildCli(join(folder, 'dist'));
  // Where it is installed its packages stand beside it: the typesetter and its letters are not bundled.
  symlinkSync(fileURLToPath(new URL('../../../node_modules', import.meta.url)), join(folder, 'node_modules'), 'dir');
  // The same command says the same: it is run once.
  const said = new Map<string, SpawnSyncReturns<string>>();
  return {
    folder,
    run: (args, input = '') => {
      const asked = JSON.stringify([args, input]);
      const env = { PATH: process.env.PATH, LANG: 'en_US.UTF-8' };
      const command = [join(folder, 'dist/sorrel.mjs'), ...args];
      const found =
        said.get(asked) ?? spawnSync(process.execPath, command, { encoding: 'utf8', input, env, maxBuffer: 2 ** 27 });
      said.set(asked, found);
      return found;
    },
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}

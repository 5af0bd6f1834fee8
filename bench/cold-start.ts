import { spawnSync } from 'node:child_process';
import { inTurns, type Pair } from './measure.ts';

/** Starts Node with arguments, throws when it fails, and throws its output away. */
function start(args: readonly string[]): void {
  const { status, stderr, error } = spawnSync(process.execPath, args, { encoding: 'utf8' });
  if (error) throw error;
  if (status !== 0) throw new Error(`node ${args.join(' ')} ended with ${status}: ${stderr}`);
}

/** A command of ours against Node doing nothing: what starting Sorrel costs above starting Node. */
export const coldStart = (args: readonly string[], rounds = 15): Promise<Pair> =>
  inTurns(
    () => start(['apps/cli/dist/sorrel.mjs', ...args]),
    () => start(['-e', '0']),
    rounds,
  );

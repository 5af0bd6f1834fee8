import { existsSync } from 'node:fs';
import type { Problem, Result } from '@sorrel/engine/derivation';
import type { GardenLine, Store } from '@sorrel/store';
import { exit, Stop } from './exit.ts';
import { words } from './words.ts';

/** Which record, and which garden in it; taken by every command that works on one. */
export const recordOptions = { store: { type: 'string' }, garden: { type: 'string' } } as const;

/** The value of a result of the store; a refusal stops the command with the reasons. */
export function orStop<T>(result: Result<T>): T {
  if (result.ok) return result.value;
  throw new Stop(exit.nothing, reasons(result.problems));
}

export const reasons = (problems: readonly Problem[]): string =>
  problems.map(({ message, fix }) => `${message} ${fix}`).join('\n');

/**
 * Works on the record of gardens and closes it. The store is loaded only here, so that other commands start quickly.
 *
 * @param where SQLite file or `postgres:` address
 * @param make whether a file that is not there is made; else a mistyped name would leave an empty record behind
 */
export async function withRecord<T>(
  where: string | undefined,
  command: string,
  make: boolean,
  work: (store: Store) => Promise<T>,
): Promise<T> {
  if (where === undefined) throw new Stop(exit.usage, words.usage(command, words.noStore));
  if (!make && !/^postgres(ql)?:/.test(where) && !existsSync(where))
    throw new Stop(exit.nothing, words.cannotRead(where, words.noSuchFile));
  const { openStore } = await import('@sorrel/store');
  const store = orStop(await openStore(where));
  try {
    return await work(store);
  } finally {
    await store.close();
  }
}

/** The garden a person means, by its name in any letters or by its id; the only one when none is named. */
export async function gardenNamed(store: Store, wanted: string | undefined): Promise<GardenLine> {
  const gardens = orStop(await store.gardens());
  const found =
    wanted === undefined
      ? gardens
      : gardens.filter(({ id, name }) => id === wanted || name.toLowerCase() === wanted.trim().toLowerCase());
  const [only, second] = found;
  if (only !== undefined && second === undefined) return only;
  const known = gardens.map(({ id, name }) => `${name} (${id})`);
  throw new Stop(exit.nothing, words.whichGarden(wanted, found.length, known));
}

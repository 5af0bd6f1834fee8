import { setTimeout } from 'node:timers/promises';
import { inspect } from './inspect.ts';
import { startWriter } from './victim.ts';
import { chance } from './work.ts';

/** A database to torture. */
export interface Target {
  readonly name: string;
  /** A place with nothing in it yet. */
  place(): Promise<string>;
  /** Kills the database server and starts it again; without it, only the writer is killed. */
  readonly killServer?: () => Promise<void>;
}

export interface Outcome {
  readonly kills: number;
  /** How many entries were acknowledged before the kills. */
  readonly acknowledged: number;
  /** Kills that came before the writer had anything acknowledged. */
  readonly early: number;
  readonly faults: readonly string[];
}

/** So many kills on one database before the next one is made: the upgrade of a new one is killed too. */
const perPlace = 10;

/**
 * Kills in the middle of the work, again and again, and looks each time whether anything acknowledged was lost.
 *
 * @param times how many kills
 * @param seed chooses the moments; the same seed chooses the same delays
 */
export async function torture(
  target: Target,
  times: number,
  seed: number,
  told: (line: string) => void = () => undefined,
): Promise<Outcome> {
  const next = chance(seed);
  const faults: string[] = [];
  let [total, early, where, work, from] = [0, 0, '', 0, 0];
  let known: { entries: number[]; photos: string[] } = { entries: [], photos: [] };
  for (let kill = 0; kill < times; kill++) {
    if (kill % perPlace === 0) {
      where = await target.place();
      work = seed * 1000 + kill;
      from = 0;
      known = { entries: [], photos: [] };
    }
    const writer = startWriter(where, work, from);
    // Every fifth kill may fall into starting, opening and upgrading; the others into the writing.
    const hasty = kill % 5 === 0;
    if (!hasty) await writer.firstWord;
    await setTimeout(next(hasty ? 400 : 120));
    if (target.killServer === undefined) writer.kill();
    else {
      await target.killServer();
      // A writer that was only about to begin finds the server well again and would never stop.
      writer.kill();
    }
    const said = await writer.gone;
    if (said.lost !== undefined && said.lost !== 'store.unreachable') faults.push(`kill ${kill + 1}: ${said.lost}`);
    known.entries.push(...said.entries);
    known.photos.push(...said.photos);
    total += said.entries.length;
    if (said.entries.length === 0) early += 1;
    const found = await inspect(where, work, known.entries, known.photos);
    faults.push(...found.faults.map((fault) => `kill ${kill + 1}: ${fault}`));
    for (let number = from + said.entries.length; number < found.next; number++) known.entries.push(number);
    from = found.next;
    if ((kill + 1) % 20 === 0)
      told(`${target.name}: ${kill + 1} kills, ${total} entries acknowledged, ${faults.length} faults`);
  }
  return { kills: times, acknowledged: total, early, faults };
}

import { setTimeout } from 'node:timers/promises';
import { value } from '../contract/kit.ts';
import { openStore, type Store } from '../src/index.ts';
import type { Target } from './rounds.ts';
import { startDayWorker, type Victim } from './victim.ts';
import { chance, entryOf, gardenOf, placeIdOf } from './work.ts';

export interface DayOutcome {
  readonly kills: number;
  /** Plans that a worker said it had stored. */
  readonly told: number;
  /** How many plans each worker program of a run has told of. */
  readonly shares: readonly number[];
  readonly faults: readonly string[];
}

/** A day that takes longer than this has lost a sample. */
const patience = 60_000;

/**
 * Plans a soil day with so many programs at once, kills one of them again and again in the middle of the work and starts
 * it anew, then looks whether each sample was planned once and only once.
 */
export async function tortureDay(
  target: Target,
  { samples, programs, kills, seed }: { samples: number; programs: number; kills: number; seed: number },
): Promise<DayOutcome> {
  const next = chance(seed);
  const faults: string[] = [];
  const where = await target.place();
  const store = value(await openStore(where, { patience: 2 }));
  const garden = gardenOf(seed);
  const codes = Array.from({ length: samples }, (_, number) => `A${number + 1}`);
  try {
    value(await store.append([entryOf(seed, 0)]));
    const list = codes.map((code, number) => ({ place: placeIdOf(seed, number), code, source: `of ${code}` }));
    value(await store.days.enqueue(garden, list, ''));
    const running: Victim[] = Array.from({ length: programs }, () => startDayWorker(where));
    const gone: Victim[] = [];
    let killed = 0;
    for (; killed < kills && (await left(store, garden)) > 0; killed++) {
      const index = next(programs);
      const victim = running[index] as Victim;
      // Every third kill may fall into opening and taking over; the others into the planning.
      if (killed % 3 !== 0) await victim.firstWord;
      await setTimeout(next(150));
      victim.kill();
      gone.push(victim);
      running[index] = startDayWorker(where);
    }
    const began = performance.now();
    while ((await left(store, garden)) > 0 && performance.now() - began < patience) await setTimeout(50);
    for (const each of running) each.kill();
    const said = await Promise.all([...gone, ...running].map((each) => each.gone));
    const plans = said.flatMap((each) => each.plans);
    for (const each of said) if (each.lost !== undefined) faults.push(`a program ended by itself: ${each.lost}`);
    for (const code of codes) {
      const times = plans.filter((each) => each === code).length;
      if (times > 1) faults.push(`${code} was planned ${times} times`);
    }
    const results = value(await store.days.results(garden));
    const kept = results.map(({ code }) => code).join();
    if (kept !== codes.join()) faults.push(`kept are ${kept}`);
    for (const { code, body } of results)
      if (body !== `plan of ${code} `.repeat(400)) faults.push(`the plan of ${code} is not whole`);
    return { kills: killed, told: plans.length, shares: said.map((each) => each.plans.length), faults };
  } finally {
    await store.close();
  }
}

const left = async (store: Store, garden: string): Promise<number> =>
  (value(await store.days.progress(garden))?.samples ?? []).filter(({ state }) => state !== 'done').length;

import type { Result } from '@sorrel/engine/derivation';
import type { Transaction } from 'kysely';
import type { Tables } from '../database/tables.ts';
import type { Claimed, Delivery } from './delivery.ts';
import { handBack, handBackFailed } from './hand-back.ts';
import type { Came, DayWorker, SamplePlanner, WorkOptions } from './types.ts';

/** What a worker does in the database, as one piece. */
export type InTransaction = <T>(work: (tx: Transaction<Tables>) => Promise<T>) => Promise<Result<T>>;

export interface Waker {
  /** Ends the pause of all who wait. */
  wake(): void;
  /** Waits, at most so long. A program that has nothing else to do may end meanwhile. */
  wait(ms: number): Promise<void>;
}

export function createWaker(): Waker {
  const sleepers = new Set<() => void>();
  return {
    wake() {
      for (const each of [...sleepers]) each();
    },
    wait: (ms) =>
      new Promise((resolve) => {
        const up = () => {
          clearTimeout(timer);
          sleepers.delete(up);
          resolve();
        };
        const timer = setTimeout(up, ms);
        timer.unref();
        sleepers.add(up);
      }),
  };
}

/** Takes samples one after the other, `most` at a time, until it is stopped. */
export function startWorker(
  delivery: Delivery,
  inTransaction: InTransaction,
  waker: Waker,
  planner: SamplePlanner,
  { most, pause = 1000, told = () => undefined, trouble = () => undefined }: WorkOptions,
): DayWorker {
  let stopping = false;

  /** @throws what waiting does not mend */
  async function store(work: (tx: Transaction<Tables>) => Promise<Came>): Promise<Came> {
    // The plan is made; a database that is away for a moment must not lose it.
    for (;;) {
      const stored = await inTransaction(work);
      if (stored.ok) return stored.value;
      trouble(stored.problems);
      if (stopping) return 'late';
      await waker.wait(pause);
    }
  }

  async function one(claimed: Claimed): Promise<void> {
    let came: Came;
    try {
      const made = await planner(claimed);
      came = await store((tx) => handBack(tx, delivery, claimed, made));
    } catch (error) {
      came = await store((tx) => handBackFailed(tx, delivery, claimed, error));
    }
    told(claimed, came);
  }

  async function lane(): Promise<void> {
    while (!stopping) {
      try {
        const claimed = await delivery.take();
        if (claimed !== undefined) {
          await one(claimed);
          continue;
        }
      } catch (error) {
        trouble(error);
      }
      if (!stopping) await waker.wait(pause);
    }
  }

  const work = delivery
    .recover()
    .catch(trouble)
    .then(() => Promise.all(Array.from({ length: most }, lane)));
  return {
    async stop() {
      stopping = true;
      waker.wake();
      await work;
    },
  };
}

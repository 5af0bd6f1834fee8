import { Worker } from 'node:worker_threads';
import type { CsvRun } from '../csv.ts';
import { createPlanner, type PlannedRows, type TableSetup } from './planner.ts';

/** Plans runs of rows, on this thread or on others. Answers may be awaited in any order. */
export interface Threads {
  plan(runs: readonly CsvRun[], first: number): Promise<PlannedRows>;
  /** How many batches may be under way before it is worth waiting for one. */
  readonly width: number;
  close(): Promise<void>;
}

/** All on this thread: for small tables, where starting another takes longer than the work. */
export function alone(setup: TableSetup): Threads {
  const planner = createPlanner(setup);
  return { width: 1, plan: async (runs, first) => planner.plan(runs, first), close: async () => {} };
}

interface Waiting {
  resolve(planned: PlannedRows): void;
  reject(error: Error): void;
}

/**
 * Rows shared out over `count` threads. Each batch goes to the thread with the fewest under way; a thread that dies
 * fails the batches it held.
 */
export function together(setup: TableSetup, count: number): Threads {
  const threads = Array.from({ length: count }, () => {
    const worker = new Worker(new URL('./table-worker.mjs', import.meta.url), { workerData: setup });
    const waiting: Waiting[] = [];
    worker.on('message', (planned: PlannedRows) => waiting.shift()?.resolve(planned));
    const fail = (error: Error) => {
      for (const each of waiting.splice(0)) each.reject(error);
    };
    worker.on('error', fail);
    worker.on('exit', (code) => fail(new Error(`a thread ended with ${code}`)));
    return { worker, waiting };
  });
  return {
    width: count * 2,
    plan(runs, first) {
      const idlest = threads.reduce((best, each) => (each.waiting.length < best.waiting.length ? each : best));
      return new Promise((resolve, reject) => {
        idlest.waiting.push({ resolve, reject });
        idlest.worker.postMessage({ runs, first });
      });
    },
    close: async () => {
      await Promise.all(threads.map(({ worker }) => worker.terminate()));
    },
  };
}

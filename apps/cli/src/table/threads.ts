import { Worker } from 'node:worker_threads';
import type { Run } from '@sorrel/intake/rows';
import { createPlanner, type PlannedRows, type TableSetup } from './planner.ts';

/** Plans runs of rows, on this thread or on others. Answers may be awaited in any order. */
export interface Threads {
  plan(runs: readonly Run[], first: number): Promise<PlannedRows>;
  /** How many batches may be under way before it is worth waiting for one. */
  readonly width: number;
  close(): Promise<void>;
}

/** All on this thread: for small tables, where starting another takes longer than the work. */
export function alone(setup: TableSetup): Threads {
  const planner = createPlanner(setup);
  return { width: 1, plan: async (runs, first) => planner.plan(runs, first), close: async () => {} };
}

interface Waiting<Done> {
  resolve(done: Done): void;
  reject(error: Error): void;
}

/** Threads that each do one job after the other. */
export interface Crew<Job, Done> {
  do(job: Job): Promise<Done>;
  readonly width: number;
  close(): Promise<void>;
}

/**
 * Starts `count` threads. Each job goes to the thread with the fewest under way; a thread that dies fails the jobs it
 * held.
 *
 * @param file what a thread runs, beside the command
 * @param setup sent to each thread once
 */
export function crew<Job, Done>(file: string, setup: unknown, count: number): Crew<Job, Done> {
  const threads = Array.from({ length: count }, () => {
    const worker = new Worker(new URL(`./${file}`, import.meta.url), { workerData: setup });
    const waiting: Waiting<Done>[] = [];
    worker.on('message', (done: Done) => waiting.shift()?.resolve(done));
    const fail = (error: Error) => {
      for (const each of waiting.splice(0)) each.reject(error);
    };
    worker.on('error', fail);
    worker.on('exit', (code) => fail(new Error(`a thread ended with ${code}`)));
    return { worker, waiting };
  });
  return {
    width: count * 2,
    do(job) {
      const idlest = threads.reduce((best, each) => (each.waiting.length < best.waiting.length ? each : best));
      return new Promise((resolve, reject) => {
        idlest.waiting.push({ resolve, reject });
        idlest.worker.postMessage(job);
      });
    },
    close: async () => {
      await Promise.all(threads.map(({ worker }) => worker.terminate()));
    },
  };
}

/** Rows shared out over `count` threads. */
export function together(setup: TableSetup, count: number): Threads {
  const {
    do: send,
    width,
    close,
  } = crew<{ runs: readonly Run[]; first: number }, PlannedRows>('table-worker.mjs', setup, count);
  return { width, close, plan: (runs, first) => send({ runs, first }) };
}

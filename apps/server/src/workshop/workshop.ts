import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import type { Delivery, Given, JobName, Order, Result } from './jobs.ts';

/** Threads beside the one that answers requests, so that nobody waits for another's plan or paper. */
export interface Workshop {
  /** @throws Error when the job fails or its thread dies; later jobs are not touched */
  run<N extends JobName>(job: N, given: Given<N>): Promise<Result<N>>;
  /** Waits for the jobs under way and lets the threads go. Later jobs are refused. */
  close(): Promise<void>;
}

/** Each thread holds the almanac, and fonts once it has printed. */
const MOST_THREADS = 4;

interface Waiting {
  readonly order: Order;
  resolve(result: unknown): void;
  reject(error: Error): void;
}

interface Thread {
  readonly worker: Worker;
  current: Waiting | undefined;
}

// The bundle has the thread beside itself; only tests run the source as it is written.
const entry = new URL(import.meta.url.endsWith('.ts') ? '../../testing/thread.mjs' : './workshop.mjs', import.meta.url);

export const usualThreads = (): number => Math.min(MOST_THREADS, availableParallelism());

/** @param most threads; each is started when it is first needed */
export function createWorkshop(most = usualThreads()): Workshop {
  const threads: Thread[] = [];
  const queue: Waiting[] = [];
  let closing: Promise<void> | undefined;
  let emptied: (() => void) | undefined;

  function start(): Thread {
    const worker = new Worker(entry);
    const thread: Thread = { worker, current: undefined };
    worker.on('message', (delivery: Delivery) => {
      const done = thread.current;
      thread.current = undefined;
      if ('failed' in delivery) done?.reject(new Error(delivery.failed));
      else done?.resolve(delivery.result);
      next();
    });
    const gone = (error: Error) => {
      const at = threads.indexOf(thread);
      if (at < 0) return;
      threads.splice(at, 1);
      thread.current?.reject(error);
      next();
    };
    worker.on('error', gone);
    worker.on('exit', (code) => gone(new Error(`a thread of the workshop ended with ${code}`)));
    // A server that has nothing else to do may end.
    worker.unref();
    threads.push(thread);
    return thread;
  }

  function next(): void {
    while (queue.length > 0) {
      const free =
        threads.find(({ current }) => current === undefined) ?? (threads.length < most ? start() : undefined);
      if (free === undefined) return;
      const waiting = queue.shift();
      if (waiting === undefined) return;
      free.current = waiting;
      try {
        free.worker.postMessage(waiting.order);
      } catch (error) {
        free.current = undefined;
        waiting.reject(error instanceof Error ? error : new Error(String(error)));
      }
    }
    if (threads.every(({ current }) => current === undefined)) emptied?.();
  }

  return {
    run<N extends JobName>(job: N, given: Given<N>) {
      if (closing !== undefined) return Promise.reject(new Error('the workshop is closed'));
      return new Promise<Result<N>>((resolve, reject) => {
        queue.push({ order: { job, given } as Order, resolve: (result) => resolve(result as Result<N>), reject });
        next();
      });
    },
    close() {
      closing ??= new Promise<void>((resolve) => {
        emptied = resolve;
        next();
      }).then(async () => {
        await Promise.all(threads.splice(0).map(({ worker }) => worker.terminate()));
      });
      return closing;
    },
  };
}

// One thread of the workshop: takes one job at a time and gives back what came of it.
import { parentPort } from 'node:worker_threads';
import { type Delivery, jobs, type Order } from './jobs.ts';

parentPort?.on('message', async ({ job, given }: Order) => {
  let delivery: Delivery;
  try {
    const work = jobs[job] as (given: unknown) => Promise<unknown>;
    delivery = { result: await work(given) };
  } catch (error) {
    delivery = { failed: error instanceof Error ? (error.stack ?? error.message) : String(error) };
  }
  parentPort?.postMessage(delivery);
});

// One thread of `sorrel intake`: takes runs of rows, gives back rows of plans and rows to mend.
import { parentPort, workerData } from 'node:worker_threads';
import type { Run } from '@sorrel/intake/rows';
import { type IntakeSetup, intakePlanner } from './planner.ts';

const plan = intakePlanner(workerData as IntakeSetup);
parentPort?.on('message', (runs: readonly Run[]) => {
  const done = plan(runs);
  parentPort?.postMessage(done, [done.plans.buffer, done.mend.buffer]);
});

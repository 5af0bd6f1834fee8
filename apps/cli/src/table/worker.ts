// One thread of `sorrel table`: takes runs of rows, gives back rows of plans.
import { parentPort, workerData } from 'node:worker_threads';
import type { Run } from '@sorrel/intake/rows';
import { createPlanner, type TableSetup } from './planner.ts';

const planner = createPlanner(workerData as TableSetup);
parentPort?.on('message', ({ runs, first }: { runs: Run[]; first: number }) => {
  const { bytes, bad } = planner.plan(runs, first);
  // Values in problems may be anything a table held; they are only ever shown as text.
  const answer = {
    bytes,
    bad: bad.map(({ line, problems }) => ({
      line,
      problems: problems.map((each) => ({ ...each, value: each.value === undefined ? undefined : String(each.value) })),
    })),
  };
  parentPort?.postMessage(answer, [bytes.buffer]);
});

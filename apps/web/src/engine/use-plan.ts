import { useEffect, useMemo, useState } from 'react';
import type { GardenRecord } from '../data/garden-store.ts';
import type { PlanAnswer, PlanQuestion } from './forecast-worker.ts';
import { type PlannedGarden, planRecord, today, withHeld, withoutHeld } from './garden-plan.ts';
import { openWorker } from './open-worker.ts';

/** The plan of a garden: at once without the forecast, and from the worker held to it. */
export function usePlan(record: GardenRecord): PlannedGarden {
  const quick = useMemo(() => planRecord(record, today()), [record]);
  const [later, setLater] = useState<{ readonly quick: PlannedGarden; readonly planned: PlannedGarden }>();
  useEffect(() => {
    if (quick.held === 'yes') return;
    const give = (planned: PlannedGarden) => setLater({ quick, planned });
    const worker = openWorker<PlanAnswer>(
      (answer) => {
        give('failed' in answer ? withoutHeld(quick) : withHeld(quick, answer.plan, answer.products));
        worker.terminate();
      },
      () => give(withoutHeld(quick)),
    );
    const question: PlanQuestion = { ask: 'plan', garden: quick.read.garden };
    worker.postMessage(question);
    return () => worker.terminate();
  }, [quick]);
  return later?.quick === quick ? later.planned : quick;
}

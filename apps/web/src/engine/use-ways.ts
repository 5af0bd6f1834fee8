import type { Place, Recommendation, Settings } from '@sorrel/engine/plan';
import { useEffect, useState } from 'react';
import type { WaysAnswer, WaysQuestion } from './forecast-worker.ts';
import type { PlannedGarden } from './garden-plan.ts';
import { openWorker } from './open-worker.ts';

/** The ways open to a place, from a worker; undefined until they are there. What was there before stays meanwhile. */
export function useWays(
  place: Place,
  settings: Settings,
  plan: Recommendation,
  products: PlannedGarden['read']['garden']['products'],
): WaysAnswer | undefined {
  const [answer, setAnswer] = useState<WaysAnswer>();
  useEffect(() => {
    const worker = openWorker<WaysAnswer>(setAnswer, (failed) => setAnswer({ failed }));
    const { derivation: _, ...asked } = plan;
    worker.postMessage({ ask: 'ways', place, settings, plan: asked, products } satisfies WaysQuestion);
    return () => worker.terminate();
  }, [place, settings, plan, products]);
  return answer;
}

import { useCallback, useEffect, useState } from 'react';
import { useGarden } from '../../app/garden-context.tsx';
import type { DayProgress, ServedDay } from '../../data/garden-store.ts';

/** How often the server is asked while it plans, milliseconds. */
const EVERY = 1000;

export interface Progress {
  readonly now: DayProgress | undefined;
  readonly error: unknown;
  /** Asks something of the queue, and shows what came of it. */
  readonly ask: (what: 'plan' | 'pause' | 'resume' | 'retry' | 'look') => Promise<void>;
}

/** How far the plans are, asked anew while the server is at it. */
export function useProgress(served: ServedDay): Progress {
  const { record } = useGarden();
  const garden = record.id;
  const [now, setNow] = useState<DayProgress>();
  const [error, setError] = useState<unknown>();
  const ask = useCallback<Progress['ask']>(
    async (what) => {
      try {
        setNow(
          await (what === 'look'
            ? served.progress(garden)
            : what === 'plan'
              ? served.plan(garden)
              : served.step(garden, what)),
        );
        setError(undefined);
      } catch (reason) {
        setError(reason);
      }
    },
    [served, garden],
  );
  // Also when the record has changed: samples may be new.
  // biome-ignore lint/correctness/useExhaustiveDependencies: see above
  useEffect(() => {
    void ask('look');
  }, [ask, record]);
  const busy = now !== undefined && (now.state === 'running' || now.running > 0);
  useEffect(() => {
    if (!busy) return;
    const timer = setInterval(() => void ask('look'), EVERY);
    return () => clearInterval(timer);
  }, [busy, ask]);
  return { now, error, ask };
}

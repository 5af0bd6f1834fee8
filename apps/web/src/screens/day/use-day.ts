import type { Numbered } from '@sorrel/store/record';
import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { useGarden } from '../../app/garden-context.tsx';
import type { Entry } from '../../data/garden-store.ts';
import { useStore } from '../../data/store-context.tsx';
import { type Day, dayOf } from './day-model.ts';

export interface DaySession {
  readonly day: Day;
  /** Everything written, what is still on its way included. */
  readonly entries: readonly Numbered[];
  /**
   * Writes entries in the order asked for. They count at once, while they are still on their way.
   *
   * @returns whether the store took them
   */
  send(entries: readonly Entry[], done: string): Promise<boolean>;
}

export type DayState =
  | { readonly state: 'loading' }
  | { readonly state: 'failed'; readonly error: unknown; readonly retry: () => void }
  | { readonly state: 'ready'; readonly session: DaySession };

/** The soil day whose screens are open, kept up to date with what is written here. */
export function useDay(): DayState {
  const store = useStore();
  const { record, write } = useGarden();
  const [stored, setStored] = useState<readonly Numbered[]>();
  const [waiting, setWaiting] = useState<readonly Entry[]>([]);
  const [error, setError] = useState<unknown>();
  const [again, setAgain] = useState(0);
  const last = useRef(0);
  const line = useRef<Promise<unknown>>(Promise.resolve());

  // A newer record of the garden means newer entries; only those are fetched.
  // biome-ignore lint/correctness/useExhaustiveDependencies: see above
  useEffect(() => {
    let current = true;
    store.entries(record.id, last.current).then(
      (fresh) => {
        if (!current) return;
        last.current = fresh.at(-1)?.number ?? last.current;
        setError(undefined);
        setStored((before = []) => [...before, ...fresh]);
        const known = new Set(fresh.map(({ entry }) => entry.id));
        setWaiting((before) => (known.size === 0 ? before : before.filter(({ id }) => !known.has(id))));
      },
      (reason) => current && setError(reason),
    );
    return () => {
      current = false;
    };
  }, [store, record, again]);

  const entries = useMemo(() => {
    const known = new Set(stored?.map(({ entry }) => entry.id));
    const from = stored?.at(-1)?.number ?? 0;
    const ahead = waiting.filter(({ id }) => !known.has(id));
    return [...(stored ?? []), ...ahead.map((entry, index) => ({ number: from + index + 1, entry }))];
  }, [stored, waiting]);
  const day = useMemo(() => dayOf(entries), [entries]);
  const send = useCallback(
    (fresh: readonly Entry[], done: string): Promise<boolean> => {
      setWaiting((before) => [...before, ...fresh]);
      const sent = line.current.then(async () => {
        const taken = await write(fresh, done);
        const ids = new Set(fresh.map(({ id }) => id));
        if (!taken) setWaiting((before) => before.filter(({ id }) => !ids.has(id)));
        return taken;
      });
      line.current = sent;
      return sent;
    },
    [write],
  );
  const session = useMemo(() => ({ day, entries, send }), [day, entries, send]);
  if (stored === undefined)
    return error === undefined
      ? { state: 'loading' }
      : { state: 'failed', error, retry: () => setAgain((count) => count + 1) };
  return { state: 'ready', session };
}

import { type Numbered, type Thing, thingsOf } from '@sorrel/store/record';
import { useCallback } from 'react';
import { useGarden } from '../app/garden-context.tsx';
import { useAsync } from '../app/use-async.ts';
import { useStore } from './store-context.tsx';

export interface Things {
  readonly entries: readonly Numbered[];
  readonly things: ReadonlyMap<string, Thing>;
}

/** Everything in the garden's record, removed things and former versions included; fetched anew when the garden changes. */
export function useThings() {
  const store = useStore();
  const { record } = useGarden();
  const load = useCallback(async (): Promise<Things> => {
    const entries = await store.entries(record.id);
    return { entries, things: thingsOf(entries) };
    // A newer record of the garden means newer entries.
  }, [store, record]);
  return useAsync(load);
}

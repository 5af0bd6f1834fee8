import { useCallback, useEffect, useState } from 'react';

export type Async<T> =
  | { readonly state: 'loading' }
  | { readonly state: 'failed'; readonly error: unknown }
  | { readonly state: 'ready'; readonly value: T };

/** Runs `load` now and again on `reload`; what was loaded before stays in view meanwhile. */
export function useAsync<T>(load: () => Promise<T>): Async<T> & { readonly reload: () => Promise<void> } {
  const [result, setResult] = useState<Async<T>>({ state: 'loading' });
  const reload = useCallback(async () => {
    try {
      setResult({ state: 'ready', value: await load() });
    } catch (error) {
      setResult({ state: 'failed', error });
    }
  }, [load]);
  useEffect(() => {
    let current = true;
    load().then(
      (value) => current && setResult({ state: 'ready', value }),
      (error) => current && setResult({ state: 'failed', error }),
    );
    return () => {
      current = false;
    };
  }, [load]);
  return { ...result, reload };
}

import type { Arrangement, PlacingInput } from '@sorrel/engine/placing';
import { useCallback, useEffect, useRef, useState } from 'react';
import type { PlacingAnswer, PlacingQuestion } from './placing-worker.ts';

export type PlacingState =
  | { readonly state: 'idle' | 'cancelled' }
  /** `step` counts the searches; 0 while the solver is fetched. */
  | { readonly state: 'working'; readonly step: number; readonly seconds: number }
  | { readonly state: 'ready'; readonly arrangement: Arrangement; readonly input: PlacingInput }
  | { readonly state: 'failed'; readonly reason: string };

/** Long enough for gardens of sixty places; after that the best found is shown, and that it is not proven. */
const SECONDS = 120;

/** Searches in a worker of its own, which `cancel` ends at once. */
export function usePlacing() {
  const [state, setState] = useState<PlacingState>({ state: 'idle' });
  const running = useRef<{ readonly worker: Worker; readonly timer: ReturnType<typeof setInterval> }>(undefined);
  const stop = useCallback(() => {
    running.current?.worker.terminate();
    clearInterval(running.current?.timer);
    running.current = undefined;
  }, []);
  useEffect(() => stop, [stop]);

  const start = useCallback(
    (input: PlacingInput) => {
      stop();
      const worker = new Worker(new URL('./placing-worker.ts', import.meta.url), { type: 'module' });
      const begun = performance.now();
      const timer = setInterval(
        () =>
          setState((before) =>
            before.state === 'working'
              ? { ...before, seconds: Math.floor((performance.now() - begun) / 1000) }
              : before,
          ),
        1000,
      );
      running.current = { worker, timer };
      setState({ state: 'working', step: 0, seconds: 0 });
      worker.onmessage = ({ data }: MessageEvent<PlacingAnswer>) => {
        if ('step' in data) {
          setState((before) => (before.state === 'working' ? { ...before, step: data.step } : before));
          return;
        }
        stop();
        setState(
          'failed' in data
            ? { state: 'failed', reason: data.failed }
            : { state: 'ready', arrangement: data.arrangement, input },
        );
      };
      worker.onerror = (event) => {
        stop();
        setState({ state: 'failed', reason: event.message });
      };
      const question: PlacingQuestion = { input, seconds: SECONDS };
      worker.postMessage(question);
    },
    [stop],
  );
  const cancel = useCallback(() => {
    stop();
    setState({ state: 'cancelled' });
  }, [stop]);
  return { state, start, cancel };
}

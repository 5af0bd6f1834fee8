import type { Forecast } from '@sorrel/engine/forecast';
import type { Application, Place, Settings } from '@sorrel/engine/plan';
import { useEffect, useRef, useState } from 'react';
import type { ForecastAnswer, ForecastQuestion } from './forecast-worker.ts';
import { openWorker } from './open-worker.ts';

export type ForecastState =
  | { readonly state: 'working' }
  | { readonly state: 'ready'; readonly forecast: Forecast }
  /** No pH is known, or nothing tells how much the soil resists. */
  | { readonly state: 'unknown' }
  | { readonly state: 'failed'; readonly reason: string };

/** The forecast of a place with some applications, from a worker. An answer to an older question is dropped. */
export function useForecast(place: Place, settings: Settings, applications: readonly Application[]): ForecastState {
  const [state, setState] = useState<ForecastState>({ state: 'working' });
  const ask = useRef<(question: Omit<ForecastQuestion, 'id' | 'ask'>) => void>(() => {});

  useEffect(() => {
    let asked = 0;
    const worker = openWorker<ForecastAnswer>(
      (answer) => {
        if (answer.id !== asked) return;
        if ('failed' in answer) setState({ state: 'failed', reason: answer.failed });
        else if (answer.forecast === undefined) setState({ state: 'unknown' });
        else setState({ state: 'ready', forecast: answer.forecast });
      },
      (reason) => setState({ state: 'failed', reason }),
    );
    ask.current = (question) => {
      asked += 1;
      worker.postMessage({ ask: 'forecast', ...question, id: asked } satisfies ForecastQuestion);
    };
    return () => worker.terminate();
  }, []);

  useEffect(() => {
    setState((before) => (before.state === 'ready' ? before : { state: 'working' }));
    ask.current({ place, settings, applications });
  }, [place, settings, applications]);

  return state;
}

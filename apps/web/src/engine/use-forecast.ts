import type { Forecast } from '@sorrel/engine/forecast';
import type { Application, Place, Recommendation, Settings } from '@sorrel/engine/plan';
import { useEffect, useRef, useState } from 'react';
import type { ForecastAnswer, ForecastQuestion } from './forecast-worker.ts';

export type ForecastState =
  | { readonly state: 'working'; readonly last?: Forecast | undefined }
  | {
      readonly state: 'ready';
      readonly forecast: Forecast;
      /** The plan that was held to the forecast, and what came of it; undefined while that is under way. */
      readonly held?: { readonly of: Recommendation; readonly plan: Recommendation } | undefined;
    }
  /** No pH is known, or nothing tells how much the soil resists. */
  | { readonly state: 'unknown' }
  | { readonly state: 'failed'; readonly reason: string };

/** While a slider moves, fewer possible soils are followed; when it rests, all of them. */
const QUICK = 200;
const REST_MS = 250;

/**
 * The forecast of a place with some applications, from the worker. Questions that were overtaken are dropped: at most
 * one is being worked on and one waits.
 *
 * @param hold a quick plan to be held to the forecast once the slider rests; the forecast is then of what came of it
 */
export function useForecast(
  place: Place,
  settings: Settings,
  applications: readonly Application[],
  hold?: Recommendation | undefined,
): ForecastState {
  const [state, setState] = useState<ForecastState>({ state: 'working' });
  const ask = useRef<(question: Omit<ForecastQuestion, 'id' | 'ask'>) => void>(() => {});
  const asked = useRef(0);

  useEffect(() => {
    const worker = new Worker(new URL('./forecast-worker.ts', import.meta.url), { type: 'module' });
    let busy = false;
    let waiting: ForecastQuestion | undefined;
    let latest = 0;
    let asking: ForecastQuestion | undefined;
    const send = (question: ForecastQuestion) => {
      busy = true;
      asking = question;
      worker.postMessage(question);
    };
    worker.onmessage = ({ data }: MessageEvent<ForecastAnswer>) => {
      busy = false;
      const of = asking?.hold;
      if (waiting !== undefined) {
        send(waiting);
        waiting = undefined;
      }
      // An older answer is still worth a look while the newest is on its way.
      if (data.id < latest) return;
      latest = data.id;
      if ('failed' in data) setState({ state: 'failed', reason: data.failed });
      else if (data.forecast === undefined) setState({ state: 'unknown' });
      else {
        const held = of === undefined || data.held === undefined ? undefined : { of, plan: data.held };
        setState({ state: 'ready', forecast: data.forecast, held });
      }
    };
    worker.onerror = (event) => setState({ state: 'failed', reason: event.message });
    ask.current = (question) => {
      asked.current += 1;
      const next: ForecastQuestion = { ask: 'forecast', ...question, id: asked.current };
      if (busy) waiting = next;
      else send(next);
    };
    return () => worker.terminate();
  }, []);

  const first = useRef(true);
  useEffect(() => {
    const question = { place, settings, applications };
    setState((before) => (before.state === 'ready' ? before : { state: 'working' }));
    if (first.current) {
      first.current = false;
      ask.current({ ...question, hold });
      return;
    }
    ask.current({ ...question, members: QUICK });
    const timer = setTimeout(() => ask.current({ ...question, hold }), REST_MS);
    return () => clearTimeout(timer);
  }, [place, settings, applications, hold]);

  return state;
}

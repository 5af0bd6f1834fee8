import { type Application, outlook, type Place, type Settings } from '@sorrel/engine/plan';

/** A question to the forecast; all of it is plain data. */
export interface ForecastQuestion {
  readonly id: number;
  readonly place: Place;
  readonly settings: Settings;
  readonly applications: readonly Application[];
  readonly members?: number;
}
export type ForecastAnswer =
  | { readonly id: number; readonly forecast: ReturnType<typeof outlook> }
  | { readonly id: number; readonly failed: string };

// A forecast takes longer than a frame, so it is worked out beside the page.
self.onmessage = ({ data }: MessageEvent<ForecastQuestion>) => {
  const { id, place, settings, applications, members } = data;
  let answer: ForecastAnswer;
  try {
    answer = { id, forecast: outlook(place, settings, applications, members === undefined ? {} : { members }) };
  } catch (error) {
    answer = { id, failed: error instanceof Error ? error.message : String(error) };
  }
  self.postMessage(answer);
};

import type { Forecast } from '@sorrel/engine/forecast';
import {
  type Application,
  type Garden,
  type GardenPlan,
  outlook,
  type Place,
  planGarden,
  type Recommendation,
  refineByForecast,
  type Settings,
} from '@sorrel/engine/plan';

/** What a place will do. All questions are plain data. */
export interface ForecastQuestion {
  readonly ask: 'forecast';
  readonly id: number;
  readonly place: Place;
  readonly settings: Settings;
  readonly applications: readonly Application[];
  readonly members?: number;
  /** A quick plan to hold to the forecast first; its own applications are then the ones foreseen. */
  readonly hold?: Recommendation | undefined;
}

/** The plan of a whole garden, every first dressing held to the forecast. */
export interface PlanQuestion {
  readonly ask: 'plan';
  readonly garden: Garden;
}

export type Failed = { readonly id?: number; readonly failed: string };
export type ForecastAnswer =
  | { readonly id: number; readonly forecast: Forecast | undefined; readonly held: Recommendation | undefined }
  | (Failed & { readonly id: number });
/** `products` are those of the question: what crosses to the page is copied, and this tells which is which. */
export type PlanAnswer = { readonly plan: GardenPlan; readonly products: Garden['products'] } | Failed;

const reasonOf = (error: unknown) => (error instanceof Error ? error.message : String(error));

// A forecast takes longer than a frame, so it is worked out beside the page.
self.onmessage = ({ data }: MessageEvent<ForecastQuestion | PlanQuestion>) => {
  self.postMessage(data.ask === 'plan' ? planned(data) : foreseen(data));
};

function planned({ garden }: PlanQuestion): PlanAnswer {
  try {
    return { plan: planGarden(garden, { explain: true, forecast: true }), products: garden.products };
  } catch (error) {
    return { failed: reasonOf(error) };
  }
}

function foreseen({ id, place, settings, applications, members, hold }: ForecastQuestion): ForecastAnswer {
  try {
    const held = hold === undefined ? undefined : refineByForecast(place, settings, hold);
    const done = held === undefined ? applications : held.applications.filter((each) => !each.onlyIfRetest);
    return { id, held, forecast: outlook(place, settings, done, members === undefined ? {} : { members }) };
  } catch (error) {
    return { id, failed: reasonOf(error) };
  }
}

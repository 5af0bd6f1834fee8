import type { Forecast } from '@sorrel/engine/forecast';
import {
  type Alternative,
  type Application,
  alternatives,
  type Garden,
  type GardenPlan,
  outlook,
  type Place,
  planGarden,
  type Recommendation,
  type Settings,
} from '@sorrel/engine/plan';
import { type RestedAnswer, restedAnswer } from './wished-picture.ts';
import type { Wish, Wishing } from './wished-plan.ts';

/** What a place will do. All questions are plain data. */
export interface ForecastQuestion {
  readonly ask: 'forecast';
  readonly id: number;
  readonly place: Place;
  readonly settings: Settings;
  readonly applications: readonly Application[];
}

/** The plan of a whole garden, every first dressing held to the forecast. */
export interface PlanQuestion {
  readonly ask: 'plan';
  readonly garden: Garden;
}

/** What all later wishes are held against. It is sent once, because it is much larger than a wish. */
export interface WishingQuestion {
  readonly ask: 'wishing';
  readonly wishing: Wishing;
}

export interface WishQuestion {
  readonly ask: 'wish';
  readonly wish: Wish;
}

/** The ways open to a place. */
export interface WaysQuestion {
  readonly ask: 'ways';
  readonly place: Place;
  readonly settings: Settings;
  readonly plan: Recommendation;
  readonly products: Garden['products'];
}

export type Question = ForecastQuestion | PlanQuestion | WishingQuestion | WishQuestion | WaysQuestion;

export type Failed = { readonly id?: number; readonly failed: string };
export type ForecastAnswer =
  | { readonly id: number; readonly forecast: Forecast | undefined }
  | (Failed & { readonly id: number });
/** Without the forecasts, of which only the figures are shown. */
export type WaysAnswer = { readonly ways: readonly Omit<Alternative, 'forecast'>[] } | Failed;
export type WishAnswer = RestedAnswer | Failed;
/** `products` are those of the question: what crosses to the page is copied, and this tells which is which. */
export type PlanAnswer = { readonly plan: GardenPlan; readonly products: Garden['products'] } | Failed;

let wishing: Wishing | undefined;

const reasonOf = (error: unknown) => (error instanceof Error ? error.message : String(error));

// A forecast takes longer than a frame, so it is worked out beside the page.
self.onmessage = ({ data }: MessageEvent<Question>) => {
  const answer = answerTo(data);
  if (answer !== undefined) self.postMessage(answer);
};

function answerTo(question: Question): unknown {
  try {
    switch (question.ask) {
      case 'forecast':
        return foreseen(question);
      case 'plan':
        return planned(question);
      case 'ways':
        return compared(question);
      case 'wishing':
        wishing = question.wishing;
        return undefined;
      case 'wish':
        return wishing === undefined ? undefined : restedAnswer(wishing, question.wish);
    }
  } catch (error) {
    return { ...('id' in question ? { id: question.id } : {}), failed: reasonOf(error) } satisfies Failed;
  }
}

const compared = ({ place, settings, plan, products }: WaysQuestion): WaysAnswer => ({
  ways: alternatives(place, settings, plan, products).map(({ forecast: _, ...way }) => way),
});

const planned = ({ garden }: PlanQuestion): PlanAnswer => ({
  plan: planGarden(garden, { explain: true, forecast: true }),
  products: garden.products,
});

const foreseen = ({ id, place, settings, applications }: ForecastQuestion): ForecastAnswer => ({
  id,
  forecast: outlook(place, settings, applications),
});

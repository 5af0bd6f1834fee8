import type { Forecast, Sketch } from '@sorrel/engine/forecast';
import { outlook, outlookSketch, type Recommendation, refineByForecast } from '@sorrel/engine/plan';
import { isWish, type Wish, type Wished, type Wishing, wishedPlan } from './wished-plan.ts';

/** What a chart draws of a forecast. */
export type Picture = Sketch;

/** The answer to a wish while a slider moves. */
export interface QuickAnswer extends Wished {
  /** Undefined where nothing can be foreseen. */
  readonly picture: Picture | undefined;
}

/** The answer when it rests. */
export interface RestedAnswer {
  readonly picture: Picture | undefined;
  /** What the forecast let stand of the plan; undefined where there is no wish. */
  readonly held: Recommendation | undefined;
}

/**
 * Dose and picture of a wish, at once and nearly: with what the place has taught so far, few possible soils, and the
 * dose not yet held to the forecast.
 */
export function quickAnswer(wishing: Wishing, wish: Wish): QuickAnswer {
  const wished = wishedPlan(wishing, wish, 'once');
  const lesson = wishing.plan.learned;
  const picture = outlookSketch(wished.place, wished.settings, firstSteps(wished.plan), { lesson });
  return { ...wished, picture };
}

/** Dose and picture of a wish as every plan and forecast is made. */
export function restedAnswer(wishing: Wishing, wish: Wish): RestedAnswer {
  const { place, plan, settings } = wishedPlan(wishing, wish, 'rest');
  const held = isWish(wish) ? refineByForecast(place, settings, plan) : undefined;
  return { held, picture: pictureOf(outlook(place, settings, firstSteps(held ?? plan))) };
}

const firstSteps = ({ applications }: Recommendation) => applications.filter((each) => !each.onlyIfRetest);

/** Only what is drawn crosses to the page: all else would only be copied. */
const pictureOf = (forecast: Forecast | undefined): Picture | undefined =>
  forecast === undefined
    ? undefined
    : { dates: forecast.dates, median: forecast.median, bands: forecast.bands.filter(({ share }) => share < 0.9) };

import { createRecorder, joined } from '../derivation/derivation.ts';
import type { Product } from '../materials/material.ts';
import { outlook } from './outlook.ts';
import type { Garden, Place, Settings } from './place.ts';
import { type Options, recommend } from './recommend.ts';
import type { Recommendation, ShoppingLine } from './recommendation.ts';
import { MEMBERS, refineByForecast } from './refine.ts';
import { shoppingFor } from './shopping.ts';

export interface GardenPlan {
  readonly recommendations: readonly Recommendation[];
  readonly shopping: readonly ShoppingLine[];
}

export interface GardenOptions extends Options {
  /** Hold each first dressing to the forecast; it may make it smaller, and costs some tenths of a second a place. */
  readonly forecast?: boolean;
  /** With `explain` and `forecast`: keep the working of the forecast behind the first dressing as well. */
  readonly explainForecast?: boolean;
  /** Told after each place how many are done. */
  readonly onPlace?: (done: number) => void;
}

/**
 * Plans every place of a garden, in order, drawing on one common stock of the products at hand.
 *
 * @param garden places and products in SI, already checked
 * @param options `explain` keeps the derivation of every figure, `forecast` holds first dressings to the forecast
 */
export function planGarden(garden: Garden, options: GardenOptions = {}): GardenPlan {
  const used = new Map<Product, number>();
  const recommendations = garden.places.map((place, index) => {
    const left = new Map<Product, Product>();
    for (const product of garden.products)
      left.set(
        product.onHand === undefined
          ? product
          : { ...product, onHand: Math.max(0, product.onHand - (used.get(product) ?? 0)) },
        product,
      );
    const first = recommend(place, [...left.keys()], garden.settings, options);
    const refined = options.forecast ? refineByForecast(place, garden.settings, first) : first;
    const recommendation = options.explainForecast ? withForecast(place, garden.settings, refined) : refined;
    options.onPlace?.(index + 1);
    // Later readers must see the product as entered, not what the earlier places left of it.
    return {
      ...recommendation,
      applications: recommendation.applications.map((application) => {
        const whole = left.get(application.product);
        if (whole === undefined) return application;
        if (!application.onlyIfRetest) used.set(whole, (used.get(whole) ?? 0) + application.mass);
        return { ...application, product: whole };
      }),
    };
  });
  return { recommendations, shopping: shoppingFor(recommendations) };
}

/** The working of the forecast that the first dressing is held to, after that of the plan. */
function withForecast(place: Place, settings: Settings, plan: Recommendation): Recommendation {
  const first = plan.applications.filter(({ number }) => number === 1);
  if (plan.derivation === undefined || first.length === 0) return plan;
  const recorder = createRecorder();
  outlook(place, settings, first, { members: MEMBERS }, recorder);
  return { ...plan, derivation: joined(plan.derivation, recorder.derivation()) };
}

import type { Product } from '../materials/material.ts';
import type { Garden } from './place.ts';
import { type Options, recommend } from './recommend.ts';
import type { Recommendation, ShoppingLine } from './recommendation.ts';
import { refineByForecast } from './refine.ts';
import { shoppingFor } from './shopping.ts';

export interface GardenPlan {
  readonly recommendations: readonly Recommendation[];
  readonly shopping: readonly ShoppingLine[];
}

export interface GardenOptions extends Options {
  /** Hold each first dressing to the forecast; it may make it smaller, and costs some tenths of a second a place. */
  readonly forecast?: boolean;
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
    const recommendation = options.forecast ? refineByForecast(place, garden.settings, first) : first;
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

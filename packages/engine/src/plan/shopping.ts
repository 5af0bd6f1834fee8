import type { Product } from '../materials/material.ts';
import type { Kilogram } from '../units/si.ts';
import type { Recommendation, ShoppingLine } from './recommendation.ts';

/**
 * What to buy for the first dressings of a garden: later ones wait for a retest, so nothing is bought for them yet.
 *
 * @returns one line a product, in whole bags when the bag is known, with a rough cost when its price is
 */
export function shoppingFor(recommendations: readonly Recommendation[]): ShoppingLine[] {
  const needed = new Map<string, { product: Product; mass: Kilogram }>();
  for (const recommendation of recommendations)
    for (const application of recommendation.applications) {
      if (application.onlyIfRetest) continue;
      const key = `${application.product.material} ${application.product.name}`;
      const line = needed.get(key);
      if (line === undefined) needed.set(key, { product: application.product, mass: application.mass });
      else line.mass += application.mass;
    }
  return [...needed.values()].map(({ product, mass }) => {
    const onHand = product.onHand ?? 0;
    const buy = Math.max(0, mass - onHand);
    const bag = product.bag;
    // A hair of rounding must not cost a whole bag.
    const bags = bag === undefined ? undefined : Math.max(0, Math.ceil(buy / bag.mass - 1e-6));
    return {
      product,
      needed: mass,
      onHand,
      buy,
      ...(bags === undefined ? {} : { bags }),
      ...(bags === undefined || bag?.price === undefined ? {} : { cost: bags * bag.price }),
    };
  });
}

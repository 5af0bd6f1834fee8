import { type Place, type Recommendation, recommend, type Settings } from '@sorrel/engine/plan';

type Product = Recommendation['applications'][number]['product'];

/** What the sliders say; what is undefined stays as the plan has it. */
export interface Wish {
  readonly aim?: number | undefined;
  /** m */
  readonly depth?: number | undefined;
  /** Index into the products offered. */
  readonly product?: number | undefined;
  /** Day of the work, ISO 8601. */
  readonly day?: string | undefined;
}

/** The least room an aim needs on both sides, so that it lies within its own range. */
const ROOM = 0.1;

/** The place as it would be; the range widens when the aim lies outside it. */
export function wishedPlace(place: Place, plan: Recommendation, { aim, depth }: Wish): Place {
  const { low, high } = plan.target;
  return {
    ...place,
    ...(depth === undefined ? {} : { depth }),
    ...(aim === undefined ? {} : { target: { low: Math.min(low, aim - ROOM), high: Math.max(high, aim + ROOM), aim } }),
  };
}

/**
 * What the engine would say to a wish, at once: the dose is not yet held to the forecast. No wish is the plan itself.
 *
 * @param own the garden's products, from which the engine chooses unless one was picked
 * @param offered products that can be picked
 */
export function wishedPlan(
  place: Place,
  plan: Recommendation,
  own: readonly Product[],
  offered: readonly Product[],
  settings: Settings,
  wish: Wish,
): { readonly place: Place; readonly plan: Recommendation; readonly settings: Settings } {
  const chosen = wish.product === undefined ? undefined : offered[wish.product];
  const then = wish.day === undefined ? settings : { ...settings, today: wish.day };
  if (Object.values(wish).every((value) => value === undefined)) return { place, plan, settings };
  const there = wishedPlace(place, plan, wish);
  return { place: there, plan: recommend(there, chosen === undefined ? own : [chosen], then), settings: then };
}

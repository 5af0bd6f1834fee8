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

/** What a wish is held against; stays while sliders move. */
export interface Wishing {
  readonly place: Place;
  readonly plan: Recommendation;
  /** The products at hand here, from which the engine chooses unless one was picked. */
  readonly own: readonly Product[];
  /** Products that can be picked. */
  readonly offered: readonly Product[];
  readonly settings: Settings;
}

export interface Wished {
  readonly place: Place;
  readonly plan: Recommendation;
  readonly settings: Settings;
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

export const isWish = (wish: Wish): boolean => Object.values(wish).some((value) => value !== undefined);

/**
 * What the engine says to a wish; the dose is not yet held to the forecast. No wish is the plan itself.
 *
 * @param at `once`: while a slider moves, with what the place has taught as the plan knows it, because to learn anew
 *   takes longer than a frame; `rest`: as every plan is made
 */
export function wishedPlan({ place, plan, own, offered, settings }: Wishing, wish: Wish, at: 'once' | 'rest'): Wished {
  if (!isWish(wish)) return { place, plan, settings };
  const chosen = wish.product === undefined ? undefined : offered[wish.product];
  const then = wish.day === undefined ? settings : { ...settings, today: wish.day };
  const there = wishedPlace(place, plan, wish);
  const options = at === 'once' ? { lesson: plan.learned } : {};
  return { place: there, plan: recommend(there, chosen === undefined ? own : [chosen], then, options), settings: then };
}

import type { Product } from '../materials/material.ts';
import { outlook } from './outlook.ts';
import type { Place, Settings } from './place.ts';
import type { Application, Recommendation } from './recommendation.ts';

/** Members used while searching; the bands on screen use more. */
export const MEMBERS = 600;
/** The first dressing answers for the time until its retest; what the water does in later years is for later plans. */
const YEARS = 1.25;
/** A chance this close to the allowed one is not worth another run. */
const CLOSE = 0.1;

/** Chance of passing the safe end with these applications, by the forecast; undefined when no forecast can be made. */
function chanceOf(
  place: Place,
  settings: Settings,
  applications: readonly Application[],
  side: 'above' | 'below',
): number | undefined {
  return outlook(place, settings, applications, { members: MEMBERS, years: YEARS })?.overshoot?.[side];
}

const scaled = (application: Application, factor: number): Application => ({
  ...application,
  mass: application.mass * factor,
  ...(application.perArea === undefined ? {} : { perArea: application.perArea * factor }),
  ...(application.perVolume === undefined ? {} : { perVolume: application.perVolume * factor }),
  currency: application.currency * factor,
});

/**
 * Holds the first dressing to the forecast: when the ensemble, which also knows the weather, the water, the feeds and
 * what is still reacting, gives a larger chance of passing the safe end than allowed, the dressing is made smaller. It
 * is never made larger. Where water or feeds may carry the bed past that end before the retest without any dose, there
 * is none: they do the work, and the retest says how far.
 *
 * @returns the recommendation with the forecast's chance
 * @source `docs/model.md`
 */
export function refineByForecast(place: Place, settings: Settings, plan: Recommendation): Recommendation {
  const first = plan.applications.filter(({ number }) => number === 1);
  if (first.length === 0) return plan;
  const side = plan.decision === 'lower' ? 'below' : 'above';
  const at = (factor: number) =>
    chanceOf(
      place,
      settings,
      first.map((application) => scaled(application, factor)),
      side,
    );
  const full = at(1);
  if (full === undefined) return plan;
  if (full <= settings.overshootChance) return { ...plan, overshootChance: full };
  const none = at(0) ?? 0;
  const allowed = settings.overshootChance;
  if (none >= allowed) return byItself(plan, none);
  let [low, high] = [0, 1];
  let chance = none;
  for (let round = 0; round < 6; round++) {
    const middle = (low + high) / 2;
    const found = at(middle) ?? 1;
    if (found > allowed) high = middle;
    else {
      low = middle;
      chance = found;
      if (found >= allowed * (1 - CLOSE)) break;
    }
  }
  return {
    ...plan,
    reasons: [...plan.reasons, { code: 'plan.step-forecast' }],
    applications: plan.applications.map((application) =>
      application.number === 1 ? scaled(application, low) : application,
    ),
    overshootChance: chance,
  };
}

/** The answer where water and feeds move the pH the wanted way anyway, perhaps too far. */
function byItself(plan: Recommendation, chance: number): Recommendation {
  const { overshootChance: _, requirement: __, ...rest } = plan;
  const parameters = plan.reasons[0]?.parameters;
  const code = plan.decision === 'lower' ? 'plan.limy-no-rate' : 'plan.sour-no-rate';
  return {
    ...rest,
    decision: 'leave alone',
    reasons: [
      parameters === undefined ? { code } : { code, parameters },
      { code: 'plan.happens-by-itself', parameters: { chance: { value: chance, dimension: 'share' } } },
    ],
    applications: [],
    cautions: [],
  };
}

/** What the products of some applications cost, by their bags; undefined when a price is missing. */
export function costOf(applications: readonly Application[]): number | undefined {
  const needed = new Map<Product, number>();
  for (const { product, mass } of applications) needed.set(product, (needed.get(product) ?? 0) + mass);
  let cost = 0;
  for (const [{ bag, onHand }, mass] of needed) {
    const buy = Math.max(0, mass - (onHand ?? 0));
    if (buy === 0) continue;
    if (bag?.price === undefined) return undefined;
    cost += Math.ceil(buy / bag.mass - 1e-6) * bag.price;
  }
  return cost;
}

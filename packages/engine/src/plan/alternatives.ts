import type { Message } from '../derivation/message.ts';
import type { Forecast } from '../forecast/types.ts';
import type { Product } from '../materials/material.ts';
import { defaultProduct } from '../materials/product.ts';
import { refusalFor } from '../materials/refuse.ts';
import { addMonths, daysBetween } from '../units/calendar.ts';
import { capFor } from './cap.ts';
import { actingPerKg } from './dressings.ts';
import { outlook } from './outlook.ts';
import type { Place, Settings } from './place.ts';
import type { Application, Recommendation } from './recommendation.ts';
import { costOf } from './refine.ts';
import { suits } from './suits.ts';

export type AlternativeKind =
  | 'do nothing'
  | 'the plan'
  | 'all at once'
  | 'two steps'
  | 'faster material'
  | 'other plants'
  | 'container';

/** One way to go, with what it asks and what it gives. */
export interface Alternative {
  readonly kind: AlternativeKind;
  readonly applications: readonly Application[];
  /** In the gardener's money; undefined when a price is not known. */
  readonly cost?: number;
  /** Months until the median is inside the range; undefined when it is not within the years looked ahead. */
  readonly months?: number;
  /** Chance of being inside the range a year from now. */
  readonly insideAfterYear?: number;
  /** Chance of ever passing the safe end. */
  readonly overshoot?: number;
  /** Times out with a bucket, a barrow or an auger: dressings and the retests between them. */
  readonly jobs: number;
  /** What to grow instead, or why this way is not open. */
  readonly plants?: readonly string[];
  readonly notes: readonly Message[];
  readonly forecast?: Forecast;
}

/** Whether a way can be gone at all: one that a limit or a caution closes comes with its reason and nothing else. */
export const isOpen = ({ kind, jobs, notes }: Alternative): boolean =>
  kind === 'do nothing' || jobs > 0 || notes.length === 0;

/** Whether the pH is beyond the safe end already and stays: then the chance of passing it tells nothing. */
export const isBeyond = ({ present, target, decision }: Recommendation): boolean =>
  present !== undefined && decision !== 'raise' && decision !== 'lower' && present.mean > target.high;

const DAYS_A_MONTH = 30.4375;
/** Limes that work within weeks to months, for comparison. */
const FAST_LIME = 'pelletized-calcitic';
const FAST_ACID = 'ferrous-sulfate-heptahydrate';

/**
 * The ways open to a place, side by side: cost, months until in range, chance of going too far, effort. Ways that a
 * published maximum or a caution closes are shown with the reason instead of figures.
 *
 * @param plan the recommendation for the place; its first entry of the list besides doing nothing
 * @param members of each forecast; fewer is faster
 * @source `docs/model.md`; caps `safe-limits`
 */
export function alternatives(
  place: Place,
  settings: Settings,
  plan: Recommendation,
  products: readonly Product[] = [],
  members = 800,
): Alternative[] {
  const list: Alternative[] = [];
  const add = (kind: AlternativeKind, applications: readonly Application[], notes: readonly Message[] = []) => {
    const found = outlook(place, settings, applications, { members });
    const cost = costOf(applications);
    list.push({
      kind,
      applications,
      jobs: jobsOf(applications),
      notes,
      ...(cost === undefined ? {} : { cost }),
      ...(found === undefined ? {} : { ...figuresOf(found, plan, settings), forecast: found }),
    });
  };
  add('do nothing', []);
  const [first] = plan.applications;
  const need = Math.abs(plan.requirement?.best ?? 0);
  if (first !== undefined && (plan.decision === 'raise' || plan.decision === 'lower')) {
    add('the plan', plan.applications);
    const cap = capFor(first.product, place.situation);
    const whole = dose(place, first, first.product, need, first.earliest);
    if (need <= cap.currency * (1 + 1e-6)) add('all at once', [whole]);
    else list.push(closed('all at once', { code: 'plan.alternative-over-maximum' }));
    if (need / 2 <= cap.currency * (1 + 1e-6)) {
      const half = dose(place, first, first.product, need / 2, first.earliest);
      const later = dose(place, first, first.product, need / 2, addMonths(first.earliest, Math.max(6, cap.months)), 2);
      add('two steps', [half, later]);
    }
    addFaster(place, settings, plan, products, need, first, add, list);
  }
  addElsewhere(place, plan, list);
  return list;
}

function addFaster(
  place: Place,
  settings: Settings,
  plan: Recommendation,
  products: readonly Product[],
  need: number,
  first: Application,
  add: (kind: AlternativeKind, applications: readonly Application[], notes?: readonly Message[]) => void,
  list: Alternative[],
): void {
  const key = plan.decision === 'raise' ? FAST_LIME : FAST_ACID;
  const product = products.find(({ material }) => material === key) ?? defaultProduct(key);
  if (product.material === first.product.material) return;
  const refusal = refusalFor(product, {
    situation: place.situation,
    targetPh: plan.target.aim,
    medium: place.medium,
    plants: place.plants,
    certifiedOrganic: place.certifiedOrganic === true,
    planted: place.situation !== 'open ground',
    carbonate: 0,
    ...(plan.present === undefined ? {} : { presentPh: plan.present.mean }),
  });
  const cap = capFor(product, place.situation).currency;
  if (refusal !== undefined) list.push(closed('faster material', refusal));
  else if (cap <= 0) list.push(closed('faster material', { code: 'plan.no-limit-published' }));
  else add('faster material', [dose(place, first, product, Math.min(need, cap), settings.today)]);
}

function addElsewhere(place: Place, plan: Recommendation, list: Alternative[]): void {
  const ph = plan.present?.mean;
  if (ph !== undefined) {
    const plants = suits(ph, place.kind, 6);
    if (plants.length > 0)
      list.push({
        kind: 'other plants',
        applications: [],
        cost: 0,
        months: 0,
        overshoot: 0,
        jobs: 1,
        plants,
        notes: [],
      });
  }
  if (place.kind !== 'container' && plan.decision !== 'leave alone')
    list.push({ kind: 'container', applications: [], jobs: 2, notes: [{ code: 'plan.alternative-container' }] });
}

const closed = (kind: AlternativeKind, reason: Message): Alternative => ({
  kind,
  applications: [],
  jobs: 0,
  notes: [reason],
});

const jobsOf = (applications: readonly Application[]): number =>
  applications.length === 0 ? 0 : applications.length * 2;

/** One dressing of a size, kg CaCO3 acting per m² or m³. */
function dose(place: Place, like: Application, product: Product, size: number, date: string, number = 1): Application {
  const perExtent = size / actingPerKg(product);
  const pot = place.kind === 'container';
  return {
    number,
    product,
    mass: perExtent * (pot ? (place.volume ?? 0) : place.area),
    ...(pot ? { perVolume: perExtent } : { perArea: perExtent }),
    currency: Math.sign(product.currency) * size,
    earliest: date,
    latest: date,
    onlyIfRetest: number > 1,
    how: like.how,
  };
}

function figuresOf(found: Forecast, plan: Recommendation, settings: Settings) {
  const side = plan.decision === 'lower' ? 'below' : 'above';
  const year = found.dates.findIndex((date) => daysBetween(settings.today, date) >= 365);
  const inside = found.inside[year < 0 ? found.inside.length - 1 : year];
  return {
    ...(found.insideFrom === undefined
      ? {}
      : { months: Math.round(daysBetween(settings.today, found.insideFrom) / DAYS_A_MONTH) }),
    ...(inside === undefined ? {} : { insideAfterYear: inside }),
    ...(found.overshoot === undefined ? {} : { overshoot: found.overshoot[side] }),
  };
}

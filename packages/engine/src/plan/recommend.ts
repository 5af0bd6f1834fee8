import { createRecorder, type Recorder } from '../derivation/derivation.ts';
import type { Message } from '../derivation/message.ts';
import { cautionsFor } from '../materials/cautions.ts';
import type { Product } from '../materials/material.ts';
import type { UseContext } from '../materials/refuse.ts';
import { asks, instead, placeCautions, retestOf } from './around.ts';
import { type Choice, chooseProducts } from './choose.ts';
import { decide, MOST_DRESSINGS } from './decide.ts';
import { type Dressings, dressingsOf } from './dressings.ts';
import { type Evidence, gather } from './evidence.ts';
import { howTo } from './how.ts';
import type { Place, Settings } from './place.ts';
import { waterCautions, waterComesFirst, waterReason } from './pot-water.ts';
import type { Decision, Recommendation, Target } from './recommendation.ts';
import { largestSafeDose, overshootRisk } from './risk.ts';
import { requirementOf } from './size.ts';
import { targetOf } from './target.ts';

export interface Options {
  /** Keep the derivation of every figure; costs time, so it is off for tables of thousands. */
  readonly explain?: boolean;
}

/** First dressing of sulfur: two thirds of the need, then a retest (UTK). */
const FIRST_SULFUR = 2 / 3;
/** A first dressing below this share of the need says the evidence is too poor to dose on (judgement, SORREL). */
const LEAST_SHARE = 0.15;

const NO_NOTES: readonly Message[] = [];

/** What every answer about a place is built from. */
interface Case {
  readonly place: Place;
  readonly target: Target;
  readonly settings: Settings;
  readonly products: readonly Product[];
  readonly evidence: Evidence;
  readonly recorder: Recorder | undefined;
}

/**
 * The whole main job for one place: evidence to decision to dated, safe applications.
 *
 * @param place a growing place in SI, already checked
 * @param products what is at hand; empty means usual almanac products are assumed and said to be
 * @param settings date, risk, region, climate
 * @returns a recommendation whose every figure can be asked for with `explain`
 * @source docs/model.md; each figure's own sources are in the derivation
 */
export function recommend(
  place: Place,
  products: readonly Product[],
  settings: Settings,
  options: Options = {},
): Recommendation {
  const recorder = options.explain ? createRecorder() : undefined;
  const target = targetOf(place, recorder);
  const evidence = gather(place, target, settings, recorder);
  const about: Case = { place, target, settings, products, evidence, recorder };
  const { present, freeLime, lead, reconciled } = evidence;
  const pot = place.kind === 'container';
  const verdict = decide({
    place,
    target,
    present,
    mayDose: present?.mayDose ?? false,
    freeLime: pot ? undefined : freeLime,
    lead,
    hasCurve: reconciled?.curve !== undefined,
  });
  const { decision, reasons } = verdict;
  let result: Recommendation;
  if (decision !== 'raise' && decision !== 'lower') result = resting(about, decision, reasons);
  else if (pot && decision === 'lower' && place.water !== undefined && waterComesFirst(place.water))
    result = resting(about, 'not practical', [waterReason(place, place.water), ...reasons]);
  else result = acting(about, decision, reasons);
  return recorder === undefined ? result : { ...result, derivation: recorder.derivation() };
}

function common({ place, target, evidence }: Case) {
  const { layer, present, reconciled } = evidence;
  return {
    place: place.id,
    target,
    layer,
    ...(present === undefined ? {} : { present: { mean: present.mean, sd: present.sd, date: present.date } }),
    ...(reconciled === undefined ? {} : { reconciled }),
    notes: present?.notes ?? NO_NOTES,
  };
}

/** An answer without a dose. */
function resting(about: Case, decision: Decision, reasons: readonly Message[]): Recommendation {
  const { place, settings, evidence } = about;
  const { present, freeLime, lead } = evidence;
  const retest = retestOf(decision, place, present?.date, settings);
  return {
    ...common(about),
    decision,
    reasons,
    applications: [],
    ...(retest === undefined ? {} : { retest }),
    cautions: [
      ...placeCautions(place, present?.mean, lead),
      ...(place.kind === 'container' ? waterCautions(place) : []),
    ],
    ask: asks(decision, place, evidence.reconciled?.ask ?? [], present, freeLime),
    instead: instead(decision, present?.mean, place),
  };
}

/** An answer with dated applications, or the reason why even that is not safe. */
function acting(about: Case, direction: 'raise' | 'lower', reasons: readonly Message[]): Recommendation {
  const { place, target, settings, products, evidence, recorder } = about;
  const { present, layer, reconciled, latest, lead } = evidence;
  const curve = reconciled?.curve;
  if (curve === undefined || present === undefined) throw new RangeError('a dose was decided without a curve');
  const requirement = requirementOf(curve, layer, present, target.aim, recorder);
  const need = Math.abs(requirement.best);
  const risk = overshootRisk(curve, present, direction === 'raise' ? target.high : target.low, layer.mass, direction);
  const wanted = direction === 'raise' ? need : FIRST_SULFUR * need;
  const safe = largestSafeDose(risk, wanted, settings.overshootChance, recorder);
  if (safe < LEAST_SHARE * need) return resting(about, 'find out first', [{ code: 'plan.too-unsure' }, ...reasons]);

  const context = contextOf(about);
  const choice = chooseProducts(direction, products, context, latest);
  if (choice.ranked.length === 0) return resting(about, 'not practical', [...choice.refused, ...reasons]);
  const job = { direction, first: safe, need, place, settings, ranked: choice.ranked, how: howTo(direction, place) };
  const dressings = dressingsOf(job, recorder);
  if (dressings.applications.length === 0)
    return resting(about, 'not practical', [{ code: 'plan.no-limit-published' }, ...reasons]);
  if (direction === 'lower' && dressings.count > MOST_DRESSINGS)
    return resting(about, 'not practical', [
      { code: 'plan.too-many-dressings', parameters: { count: dressings.count } },
      ...reasons,
    ]);
  const first = firstDose(dressings);
  const onlyHalf = direction === 'lower' && safe >= wanted * 0.999;
  return {
    ...common(about),
    decision: direction,
    reasons: [
      ...reasons,
      ...stepReasons(first < need * 0.999, dressings.capped, onlyHalf),
      ...(reconciled?.disagree ? [{ code: 'plan.readings-disagree' } as const] : []),
      ...choice.why,
      ...(choice.assumed
        ? [{ code: 'plan.product-assumed', parameters: { product: choice.ranked[0]?.name ?? '' } } as const]
        : []),
    ],
    requirement,
    applications: dressings.applications,
    overshootChance: risk.chance(first),
    retest: {
      ...dressings.retest,
      why: {
        code:
          place.kind === 'container'
            ? 'plan.retest-pot'
            : direction === 'raise'
              ? 'plan.retest-lime'
              : 'plan.retest-sulfur',
      },
    },
    cautions: [
      ...productCautions(dressings, choice, context, place),
      ...placeCautions(place, present.mean, lead),
      ...(place.kind === 'container' ? waterCautions(place) : []),
    ],
    ask: asks(direction, place, reconciled?.ask ?? [], present, evidence.freeLime),
    instead: [],
  };
}

function contextOf({ place, target, evidence }: Case): UseContext {
  const { present, freeLime, lead } = evidence;
  const acid = place.plants.length > 0 && place.plants.every((plant) => plant.reaction === 'acid-loving');
  return {
    situation: place.situation,
    targetPh: target.aim,
    highPh: target.high,
    medium: place.medium,
    plants: place.plants,
    planted: place.situation !== 'open ground',
    home: true,
    ...(present === undefined ? {} : { presentPh: present.mean }),
    ...(acid ? { plantsReaction: 'acid-loving' as const } : {}),
    ...(freeLime === undefined || freeLime.carbonate.how === 'not tested'
      ? {}
      : { carbonate: freeLime.carbonate.fraction }),
    ...(lead === undefined ? {} : { lead }),
  };
}

const firstDose = (dressings: Dressings): number => {
  let sum = 0;
  for (const application of dressings.applications) if (application.number === 1) sum += Math.abs(application.currency);
  return sum;
};

function stepReasons(inSteps: boolean, capped: boolean, onlyPart: boolean): readonly Message[] {
  if (!inSteps) return [];
  return [{ code: capped ? 'plan.step-cap' : onlyPart ? 'plan.step-two-thirds' : 'plan.step-risk' }];
}

function productCautions(dressings: Dressings, choice: Choice, context: UseContext, place: Place): readonly Message[] {
  const used = new Set<Product>();
  for (const application of dressings.applications) used.add(application.product);
  const around = {
    ...context,
    ...(place.nearOpenWater === undefined ? {} : { nearOpenWater: place.nearOpenWater }),
    ...(place.childrenOrPets === undefined ? {} : { childrenOrPets: place.childrenOrPets }),
  };
  const cautions: Message[] = [];
  const said = new Set<string>();
  for (const product of used)
    for (const caution of cautionsFor(product, around))
      if (!said.has(caution.code)) {
        said.add(caution.code);
        cautions.push(caution);
      }
  return [...cautions, ...choice.refused];
}

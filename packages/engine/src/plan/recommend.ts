import { createRecorder, type Recorder } from '../derivation/derivation.ts';
import type { Message } from '../derivation/message.ts';
import type { Learned } from '../learning/types.ts';
import { type CautionContext, cautionsFor } from '../materials/cautions.ts';
import type { Product } from '../materials/material.ts';
import type { UseContext } from '../materials/refuse.ts';
import { diseaseTarget } from '../nutrients/disease-target.ts';
import { asks, instead, placeCautions, retestOf } from './around.ts';
import { chooseProducts } from './choose.ts';
import { decide, MOST_DRESSINGS } from './decide.ts';
import { type Dressings, dressingsOf } from './dressings.ts';
import { type Evidence, gather } from './evidence.ts';
import { howTo } from './how.ts';
import type { Place, PlantRange, Settings } from './place.ts';
import { waterCautions, waterComesFirst, waterReason } from './pot-water.ts';
import type { Application, Decision, Recommendation, Target } from './recommendation.ts';
import { largestSafeDose, overshootRisk } from './risk.ts';
import { requirementOf } from './size.ts';
import { targetOf } from './target.ts';

export interface Options {
  /** Keep the derivation of every figure; costs time, so it is off for tables of thousands. */
  readonly explain?: boolean;
  /**
   * What the record of the place has taught, from an earlier answer. Learning takes longer than a frame; with a lesson
   * nothing is learned anew, so an answer to a slightly different question comes at once and is nearly the same.
   */
  readonly lesson?: Learned | undefined;
}

/** First dressing of sulfur: two thirds of the need, then a retest (UTK). */
const FIRST_SULFUR = 2 / 3;
/** A first dressing below this share of the need says the evidence is too poor to dose on (judgement, SORREL). */
const LEAST_SHARE = 0.15;

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
  const evidence = gather(place, target, settings, recorder, false, options.lesson);
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
    result = resting(about, 'not practical', [waterReason(place, place.water), outOfRange(decision, reasons)]);
  else result = acting(about, decision, reasons);
  return recorder === undefined ? result : { ...result, derivation: recorder.derivation() };
}

type Draft = { -readonly [Key in keyof Recommendation]: Recommendation[Key] };

/** The answer so far, built field by field because tables of thousands pass through here. */
function begin({ place, target, evidence }: Case, decision: Decision, reasons: readonly Message[]): Draft {
  const { layer, present, reconciled, learned } = evidence;
  const draft: Draft = {
    place: place.id,
    decision,
    reasons,
    notes: notesOf(place, present?.notes ?? NONE),
    target,
    layer,
    applications: NO_APPLICATIONS,
    cautions: NONE,
    ask: NONE,
    instead: NO_NAMES,
  };
  if (present !== undefined) draft.present = { mean: present.mean, sd: present.sd, date: present.date };
  if (reconciled !== undefined) draft.reconciled = reconciled;
  if (learned !== undefined) draft.learned = learned;
  return draft;
}

/** What is noted of the reading, and what diseases that are present do to the target. */
const notesOf = ({ plants, diseases }: Place, notes: readonly Message[]): readonly Message[] =>
  diseases === undefined ? notes : [...notes, ...diseaseTarget(plants, diseases).messages];

/** An answer without a dose. */
function resting(about: Case, decision: Decision, reasons: readonly Message[]): Recommendation {
  const { place, settings, evidence } = about;
  const { present, freeLime, lead } = evidence;
  const draft = begin(about, decision, reasons);
  const retest = retestOf(decision, place, present?.date, settings);
  if (retest !== undefined) draft.retest = retest;
  draft.cautions = aroundCautions(place, present?.mean, lead);
  draft.ask = asks(decision, place, evidence.reconciled?.ask ?? NONE, present, freeLime);
  draft.instead = instead(decision, present?.mean, place);
  return draft;
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
  if (safe < LEAST_SHARE * need) return resting(about, 'find out first', [outOfRange(direction, reasons), TOO_UNSURE]);

  const context = contextOf(about);
  const choice = chooseProducts(direction, products, context, latest);
  if (choice.ranked.length === 0)
    return resting(about, 'not practical', [outOfRange(direction, reasons), ...choice.refused]);
  const job = { direction, first: safe, need, place, settings, ranked: choice.ranked, how: howTo(direction, place) };
  const dressings = dressingsOf(job, recorder);
  if (dressings.applications.length === 0)
    return resting(about, 'not practical', [outOfRange(direction, reasons), NO_LIMIT]);
  if (direction === 'lower' && dressings.count > MOST_DRESSINGS)
    return resting(about, 'not practical', [
      outOfRange(direction, reasons),
      { code: 'plan.too-many-dressings', parameters: { count: dressings.count } },
    ]);
  const first = firstDose(dressings);
  const why = [...reasons];
  if (first < need * 0.999)
    why.push(
      dressings.capped ? STEP_CAP : direction === 'lower' && safe >= wanted * 0.999 ? STEP_TWO_THIRDS : STEP_RISK,
    );
  if (dressings.spread !== undefined)
    why.push({ code: 'plan.step-after-retest', parameters: { date: dressings.spread } });
  if (reconciled?.disagree) why.push(DISAGREE);
  why.push(...choice.why);
  if (place.certifiedOrganic === true) why.push(ORGANIC);
  if (choice.assumed) why.push({ code: 'plan.product-assumed', parameters: { product: choice.ranked[0]?.name ?? '' } });
  const draft = begin(about, direction, why);
  draft.requirement = requirement;
  draft.applications = dressings.applications;
  draft.overshootChance = risk.chance(first);
  const { earliest, latest: last } = dressings.retest;
  draft.retest = {
    earliest,
    latest: last,
    why: place.kind === 'container' ? RETEST_POT : direction === 'raise' ? RETEST_LIME : RETEST_SULFUR,
  };
  const around = aroundCautions(place, present.mean, lead);
  const ofProducts = productCautions(dressings, context, place);
  draft.cautions =
    around.length + choice.refused.length === 0 ? ofProducts : [...ofProducts, ...choice.refused, ...around];
  draft.ask = asks(direction, place, reconciled?.ask ?? NONE, present, evidence.freeLime);
  return draft;
}

/** The same finding without the promise to change it, for answers that end without a dose. */
function outOfRange(direction: 'raise' | 'lower', reasons: readonly Message[]): Message {
  const parameters = reasons[0]?.parameters;
  const code = direction === 'raise' ? 'plan.sour-no-rate' : 'plan.limy-no-rate';
  return parameters === undefined ? { code } : { code, parameters };
}

const NONE: readonly Message[] = [];
const NO_NAMES: readonly string[] = [];
const NO_APPLICATIONS: Recommendation['applications'] = [];
const TOO_UNSURE: Message = { code: 'plan.too-unsure' };
const NO_LIMIT: Message = { code: 'plan.no-limit-published' };
const STEP_CAP: Message = { code: 'plan.step-cap' };
const STEP_TWO_THIRDS: Message = { code: 'plan.step-two-thirds' };
const STEP_RISK: Message = { code: 'plan.step-risk' };
const ORGANIC: Message = { code: 'plan.certified-organic' };
const DISAGREE: Message = { code: 'plan.readings-disagree' };
const RETEST_POT: Message = { code: 'plan.retest-pot' };
const RETEST_LIME: Message = { code: 'plan.retest-lime' };
const RETEST_SULFUR: Message = { code: 'plan.retest-sulfur' };

/** Cautions of the place: lead, extreme readings, hard water on pots. */
const aroundCautions = (place: Place, ph: number | undefined, lead: number | undefined): readonly Message[] =>
  place.kind === 'container'
    ? [...placeCautions(place, ph, lead), ...waterCautions(place)]
    : placeCautions(place, ph, lead);

function contextOf({ place, target, evidence }: Case): UseContext {
  const { present, freeLime, lead } = evidence;
  const context: { -readonly [Key in keyof UseContext]: UseContext[Key] } = {
    situation: place.situation,
    targetPh: target.aim,
    highPh: target.high,
    medium: place.medium,
    plants: place.plants,
    planted: place.situation !== 'open ground',
    home: true,
  };
  if (place.certifiedOrganic === true) context.certifiedOrganic = true;
  if (present !== undefined) context.presentPh = present.mean;
  if (place.plants.length > 0 && place.plants.every(isAcidLoving)) context.plantsReaction = 'acid-loving';
  if (freeLime !== undefined && freeLime.carbonate.how !== 'not tested')
    context.carbonate = freeLime.carbonate.fraction;
  if (lead !== undefined) context.lead = lead;
  return context;
}

const isAcidLoving = (plant: PlantRange): boolean => plant.reaction === 'acid-loving';

const firstDose = (dressings: Dressings): number => {
  let sum = 0;
  for (const application of dressings.applications) if (application.number === 1) sum += Math.abs(application.currency);
  return sum;
};

/** What the products of the plan ask care for; one list when there is one product, which nearly always is so. */
function productCautions(dressings: Dressings, context: UseContext, place: Place): readonly Message[] {
  const around: { -readonly [Key in keyof CautionContext]: CautionContext[Key] } = { situation: context.situation };
  if (place.nearOpenWater !== undefined) around.nearOpenWater = place.nearOpenWater;
  if (place.childrenOrPets !== undefined) around.childrenOrPets = place.childrenOrPets;
  const { applications } = dressings;
  const first = (applications[0] as Application).product;
  if (applications.every(({ product }) => product === first)) return cautionsFor(first, around);
  const byCode = new Map<string, Message>();
  for (const { product } of applications)
    for (const caution of cautionsFor(product, around))
      if (!byCode.has(caution.code)) byCode.set(caution.code, caution);
  return [...byCode.values()];
}

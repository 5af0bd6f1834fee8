import { createRecorder, type Recorder } from '../derivation/derivation.ts';
import type { Message } from '../derivation/message.ts';
import { presentPh } from '../evidence/present-ph.ts';
import { cautionsFor } from '../materials/cautions.ts';
import type { Product } from '../materials/material.ts';
import { reconcile } from '../requirement/reconcile.ts';
import { carbonateOf } from '../soil/free-lime.ts';
import { layerOf } from '../soil/layer.ts';
import { textureOf } from '../soil/texture.ts';
import { asks, highestLead, instead, newestLaboratory, placeCautions, routineRetest } from './around.ts';
import { chooseProducts } from './choose.ts';
import { decide, MOST_DRESSINGS } from './decide.ts';
import { dressingsOf } from './dressings.ts';
import { howTo } from './how.ts';
import type { Place, Settings } from './place.ts';
import { recommendPot } from './pots.ts';
import type { Recommendation, Target } from './recommendation.ts';
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
  const result =
    place.kind === 'container'
      ? recommendPot(place, target, products, settings, recorder)
      : recommendGround(place, target, products, settings, recorder);
  return recorder === undefined ? result : { ...result, derivation: recorder.derivation() };
}

function recommendGround(
  place: Place,
  target: Target,
  products: readonly Product[],
  settings: Settings,
  recorder: Recorder | undefined,
): Recommendation {
  const { tests } = place;
  const latest = newestLaboratory(tests);
  const texture = textureOf(place, latest);
  const layer = layerOf(place, texture, recorder);
  const present = presentPh(tests, settings.today, {}, recorder);
  const carbonate = carbonateOf(tests, present?.mean);
  const lead = highestLead(tests);
  const reconciled =
    present === undefined || target.conflicts.length > 0 || (present.mean >= target.low && present.mean <= target.high)
      ? undefined
      : reconcile(
          {
            present,
            targetPh: target.aim,
            layer,
            medium: place.medium,
            tests,
            direction: present.mean < target.low ? 'raise' : 'lower',
            ...(texture === undefined ? {} : { texture }),
            ...(place.organicMatter === undefined ? {} : { organicMatter: place.organicMatter }),
            ...(settings.region === undefined ? {} : { region: settings.region }),
            carbonate: carbonate.fraction,
          },
          recorder,
        );
  const verdict = decide({
    place,
    target,
    present,
    mayDose: present?.mayDose ?? false,
    carbonate,
    lead,
    hasCurve: reconciled?.curve !== undefined,
  });
  const common = {
    place: place.id,
    target,
    layer,
    ...(present === undefined ? {} : { present: { mean: present.mean, sd: present.sd, date: present.date } }),
    ...(reconciled === undefined ? {} : { reconciled }),
  };
  const resting = (
    decision: Recommendation['decision'],
    reasons: readonly Message[],
    ask: readonly Message[],
  ): Recommendation => ({
    ...common,
    decision,
    reasons,
    applications: [],
    cautions: placeCautions(place, present?.mean, lead),
    ask,
    instead: instead(decision, present?.mean, place),
    ...(present === undefined || decision === 'find out first'
      ? {}
      : { retest: routineRetest(present.date, settings) }),
  });
  if (verdict.decision !== 'raise' && verdict.decision !== 'lower')
    return resting(
      verdict.decision,
      verdict.reasons,
      asks(verdict.decision, place, reconciled?.ask ?? [], present?.mean, carbonate.known),
    );

  const curve = reconciled?.curve;
  if (curve === undefined || present === undefined) throw new RangeError('a dose was decided without a curve');
  const direction = verdict.decision;
  const requirement = requirementOf(curve, layer, present, target.aim, recorder);
  const need = Math.abs(requirement.best);
  const safeEnd = direction === 'raise' ? target.high : target.low;
  const risk = overshootRisk(curve, present, safeEnd, layer.mass, direction);
  const wanted = direction === 'raise' ? need : FIRST_SULFUR * need;
  const safe = largestSafeDose(risk, wanted, settings.overshootChance, recorder);
  if (safe < LEAST_SHARE * need)
    return resting('find out first', [{ code: 'plan.too-unsure' }, ...verdict.reasons], reconciled?.ask ?? []);
  const context = {
    situation: place.situation,
    presentPh: present.mean,
    targetPh: target.aim,
    highPh: target.high,
    carbonate: carbonate.fraction,
    medium: place.medium,
    plants: place.plants,
    home: true,
    ...(lead === undefined ? {} : { lead }),
  };
  const choice = chooseProducts(direction, products, context, latest);
  const dressings = dressingsOf(
    { direction, first: safe, need, place, settings, ranked: choice.ranked, how: howTo(direction, place) },
    recorder,
  );
  if (direction === 'lower' && dressings.count > MOST_DRESSINGS)
    return resting(
      'not practical',
      [{ code: 'plan.too-many-dressings', parameters: { count: dressings.count } }, ...verdict.reasons],
      [],
    );
  const firstCurrency = dressings.applications
    .filter((application) => application.number === 1)
    .reduce((sum, application) => sum + Math.abs(application.currency), 0);
  const reasons = [...verdict.reasons];
  if (dressings.applications.length > 1 && firstCurrency < need * 0.999)
    reasons.push({
      code: dressings.capped
        ? 'plan.step-cap'
        : direction === 'lower' && safe >= wanted * 0.999
          ? 'plan.step-two-thirds'
          : 'plan.step-risk',
    });
  if (reconciled?.disagree) reasons.push({ code: 'plan.readings-disagree' });
  reasons.push(...choice.why);
  if (choice.assumed)
    reasons.push({ code: 'plan.product-assumed', parameters: { product: choice.ranked[0]?.name ?? '' } });
  const used = new Set(dressings.applications.map((application) => application.product));
  return {
    ...common,
    decision: direction,
    reasons,
    requirement,
    applications: dressings.applications,
    overshootChance: risk.chance(direction === 'raise' ? firstCurrency : firstCurrency),
    retest: { ...dressings.retest, why: { code: direction === 'raise' ? 'plan.retest-lime' : 'plan.retest-sulfur' } },
    cautions: [
      ...[...used].flatMap((product) =>
        cautionsFor(product, {
          ...context,
          nearOpenWater: place.nearOpenWater === true,
          childrenOrPets: place.childrenOrPets === true,
        }),
      ),
      ...choice.refused,
      ...placeCautions(place, present.mean, lead),
    ],
    ask: [...present.notes, ...(reconciled?.ask ?? [])],
    instead: [],
  };
}

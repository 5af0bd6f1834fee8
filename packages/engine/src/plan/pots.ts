import { curveParameter } from '@sorrel/almanac/curve-parameters';
import { waterAlkalinity } from '@sorrel/almanac/water-alkalinity';
import type { Recorder } from '../derivation/derivation.ts';
import type { Message } from '../derivation/message.ts';
import { presentPh } from '../evidence/present-ph.ts';
import { CACO3_PER_CHARGE } from '../materials/caco3.ts';
import { cautionsFor } from '../materials/cautions.ts';
import type { Product } from '../materials/material.ts';
import type { BufferCurve, Layer } from '../soil/soil.ts';
import { addDays } from '../units/calendar.ts';
import { chooseProducts } from './choose.ts';
import { decide } from './decide.ts';
import { dressingsOf } from './dressings.ts';
import { howTo } from './how.ts';
import type { Place, Settings, Water } from './place.ts';
import type { Recommendation, Target } from './recommendation.ts';
import { largestSafeDose, overshootRisk } from './risk.ts';

/** Peat mixes answer in a straight line over the range that matters, so the curve is made wide. */
const STRAIGHT = 1000;
/** 10 % and 90 % points of the normal distribution. */
const Z_80 = 1.2816;

/**
 * The main job for pots: everything is counted per m³ of mix, and the water comes before any powder.
 *
 * @param place a container with the volume of its mix, m³
 * @source peat buffer capacity COMPEAT; caps ALTLAND10, ALT10, UCD_PEAT; water bands ALK_SLIDES, ALK_RANGE
 */
export function recommendPot(
  place: Place,
  target: Target,
  products: readonly Product[],
  settings: Settings,
  recorder: Recorder | undefined,
): Recommendation {
  const present = presentPh(place.tests, settings.today, {}, recorder);
  const row = curveParameter('peat-per-volume');
  const curve: BufferCurve = {
    beta0: row.value,
    sdLog: curveParameter('sd-peat').value,
    pm: target.aim,
    w: STRAIGHT,
    carbonate: 0,
    plateau: curveParameter('plateau').value,
  };
  // Per m³ of mix: the "layer" is one cubic metre, so that rates come out per volume.
  const layer: Layer = { depth: 1, bulkDensity: 1, coarseFragments: 0, mass: 1 };
  const verdict = decide({
    place,
    target,
    present,
    mayDose: present?.mayDose ?? false,
    carbonate: { fraction: 0, known: true },
    lead: undefined,
    hasCurve: true,
  });
  const hard = place.water !== undefined && place.water.alkalinity >= ACT_ABOVE;
  const common = {
    place: place.id,
    target,
    layer,
    ...(present === undefined ? {} : { present: { mean: present.mean, sd: present.sd, date: present.date } }),
    instead: [],
  };
  const cautions: Message[] =
    place.water !== undefined && place.water.alkalinity >= WARN_ABOVE ? [waterCaution(place.water)] : [];
  const ask: Message[] = [
    ...(present === undefined ? [{ code: 'plan.pot-no-test' } as const] : present.notes),
    ...(place.water === undefined ? [{ code: 'plan.ask-water' } as const] : []),
  ];
  const soon = {
    earliest: addDays(settings.today, 28),
    latest: addDays(settings.today, 42),
    why: { code: 'plan.retest-pot' },
  } as const;
  const resting = (decision: Recommendation['decision'], reasons: readonly Message[]): Recommendation => ({
    ...common,
    decision,
    reasons,
    applications: [],
    cautions,
    ask,
    ...(present === undefined ? {} : { retest: soon }),
  });
  if ((verdict.decision !== 'raise' && verdict.decision !== 'lower') || present === undefined)
    return resting(verdict.decision, verdict.reasons);
  if (verdict.decision === 'lower' && hard && place.water !== undefined)
    return resting('not practical', [waterReason(place.water, place), ...verdict.reasons]);

  const direction = verdict.decision;
  const need = curve.beta0 * Math.abs(target.aim - present.mean);
  if (recorder)
    recorder.step({
      symbol: 'D_need',
      title: 'Need of one cubic metre of mix, as pure calcium carbonate',
      formula: 'D_need = b · |T − pH|',
      terms: [
        { symbol: 'b', value: curve.beta0, unit: 'kg CaCO3/m³/pH', origin: 'table', source: 'COMPEAT' },
        { symbol: 'T', value: target.aim, unit: 'pH', origin: 'step' },
        { symbol: 'pH', value: present.mean, unit: 'pH', origin: 'step' },
      ],
      value: need,
      unit: 'kg CaCO3/m³',
      sources: row.sources,
      basis: row.basis,
      note: row.note ?? '',
    });
  const risk = overshootRisk(curve, present, direction === 'raise' ? target.high : target.low, 1, direction);
  const safe = largestSafeDose(risk, need, settings.overshootChance, recorder);
  if (safe <= 0) return resting('find out first', [{ code: 'plan.too-unsure' }, ...verdict.reasons]);
  const context = {
    situation: place.situation,
    presentPh: present.mean,
    targetPh: target.aim,
    highPh: target.high,
    carbonate: 0,
    medium: place.medium,
    plants: place.plants,
    home: true,
  };
  const choice = chooseProducts(direction, products, context, undefined);
  const dressings = dressingsOf(
    { direction, first: safe, need, place, settings, ranked: choice.ranked, how: howTo(direction, place) },
    recorder,
  );
  const first = dressings.applications
    .filter((application) => application.number === 1)
    .reduce((sum, application) => sum + Math.abs(application.currency), 0);
  const spread = Math.exp(Z_80 * Math.hypot(curve.sdLog, present.sd / Math.abs(target.aim - present.mean)));
  const sign = direction === 'raise' ? 1 : -1;
  return {
    ...common,
    decision: direction,
    reasons: [
      ...verdict.reasons,
      ...(first < need * 0.999 ? [{ code: dressings.capped ? 'plan.step-cap' : 'plan.step-risk' } as const] : []),
      ...(direction === 'lower' ? [{ code: 'plan.pot-lower-little' } as const] : []),
      ...(choice.assumed
        ? [{ code: 'plan.product-assumed', parameters: { product: choice.ranked[0]?.name ?? '' } } as const]
        : []),
    ],
    requirement: { best: sign * need, low: (sign * need) / spread, high: sign * need * spread },
    applications: dressings.applications,
    overshootChance: risk.chance(first),
    retest: {
      ...soon,
      earliest: addDays(dressings.applications[0]?.earliest ?? settings.today, 28),
      latest: addDays(dressings.applications[0]?.earliest ?? settings.today, 42),
    },
    cautions: [
      ...cautions,
      ...[...new Set(dressings.applications.map((application) => application.product))].flatMap((product) =>
        cautionsFor(product, {
          ...context,
          nearOpenWater: place.nearOpenWater === true,
          childrenOrPets: place.childrenOrPets === true,
        }),
      ),
      ...choice.refused,
    ],
    ask,
  };
}

const band = (kind: string, subject: string): number => {
  const row = waterAlkalinity.find((candidate) => candidate.kind === kind && candidate.subject === subject);
  if (row?.high === undefined) throw new RangeError(`no ${kind} row for ${subject} in water-alkalinity`);
  return row.high;
};
/** meq/L, which is mol/m³: above this the water is dealt with first, whatever the pot. */
const ACT_ABOVE = band('act', 'any pot');
/** meq/L from which pots of 4 to 5 inches are warned (memory). */
const WARN_ABOVE = band('warn', '4-5 inch pots');

const waterCaution = (water: Water): Message => ({
  code: 'plan.caution-pot-water',
  parameters: { alkalinity: { value: water.alkalinity, dimension: 'alkalinity' } },
});

function waterReason(water: Water, place: Place): Message {
  if (water.perYear === undefined || place.depth <= 0) return waterCaution(water);
  const load = (water.alkalinity * water.perYear * CACO3_PER_CHARGE) / place.depth;
  return { code: 'plan.pot-water', parameters: { load: { value: load, dimension: 'massPerVolume' } } };
}

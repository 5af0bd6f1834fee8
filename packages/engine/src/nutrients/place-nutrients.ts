import { criticalPhs } from '@sorrel/almanac/critical-ph';
import { nutrientMechanisms } from '@sorrel/almanac/nutrient-mechanisms';
import type { Message } from '../derivation/message.ts';
import type { Place } from '../plan/place.ts';
import type { Recommendation } from '../plan/recommendation.ts';
import type { Ph } from '../units/si.ts';
import { type DangerLevel, dangerAt, type Series, seriesFor, type Usability, usability } from './availability.ts';
import { usableSentences } from './compare-usable.ts';
import { DANGERS, NUTRIENTS, type Nutrient } from './nutrient.ts';
import { potCrop, potFlag } from './pot-flag.ts';
import { type NutrientVerdict, nutrientVerdicts } from './verdict.ts';

export interface PlaceNutrients {
  readonly series: Series;
  readonly today: Ph;
  readonly planned?: Ph;
  readonly lines: readonly NutrientLine[];
  readonly dangers: readonly DangerLevel[];
  /** From the latest test that lists nutrients. */
  readonly verdicts: readonly NutrientVerdict[];
  readonly messages: readonly Message[];
}

export interface NutrientLine {
  readonly nutrient: Nutrient;
  readonly today: Usability;
  readonly planned?: Usability;
  readonly why: Message;
  /** What moving the pH would do; only when a pH is planned. */
  readonly change: readonly Message[];
}

/** Below this molybdenum is locked up (mo-grower). */
const SOUR_MOLYBDENUM = 5.5;
/** A change of pH smaller than this is not worth a sentence: a test does not see it. */
const SAME = 0.2;

/**
 * What the pH of a place does to its nutrients: how usable each is today and at the planned pH, why, what stands in
 * danger, and whether what the soil test found is enough, locked, short or too much.
 *
 * @param today pH now, on the scale of the place's tests
 * @param planned pH the plan leads to; left out when it is to be left alone
 */
export function placeNutrients(place: Place, today: Ph, planned?: Ph): PlaceNutrients {
  const { medium } = place;
  const aim = planned !== undefined && Math.abs(planned - today) >= SAME ? planned : undefined;
  const lines = NUTRIENTS.map(
    (nutrient): NutrientLine => ({
      nutrient,
      today: usability(nutrient, today, medium),
      ...(aim === undefined ? {} : { planned: usability(nutrient, aim, medium) }),
      why: mechanism(nutrient),
      change: aim === undefined ? [] : usableSentences(nutrient, today, aim, medium),
    }),
  );
  const ironInefficient = potIron(place);
  return {
    series: seriesFor(medium),
    today,
    ...(aim === undefined ? {} : { planned: aim }),
    lines,
    dangers: DANGERS.map((danger) => dangerAt(danger, today, medium)),
    verdicts: nutrientVerdicts(latestLevels(place), {
      ph: today,
      medium,
      ...(ironInefficient === undefined ? {} : { ironInefficient }),
    }),
    messages: placeMessages(place, today),
  };
}

/**
 * What the plan of a place makes of its nutrients: at the pH of today and, when something is to be spread, at its aim.
 *
 * @returns undefined where no pH is known
 */
export const plannedNutrients = (
  place: Place,
  { present, applications, target }: Pick<Recommendation, 'present' | 'applications' | 'target'>,
): PlaceNutrients | undefined =>
  present === undefined
    ? undefined
    : placeNutrients(place, present.mean, applications.length > 0 ? target.aim : undefined);

/** Whether a message of a place tells how far the lines can be trusted, and not what to heed there. */
export const isOfLines = ({ code }: Message): boolean =>
  code === 'nutrients.chart-critique' || code.startsWith('nutrients.series-');

/** Why a nutrient follows the pH as it does, in a sentence. */
export const mechanism = (nutrient: string): Message => {
  const row = nutrientMechanisms.find((one) => one.nutrient === nutrient);
  if (row === undefined) throw new RangeError(`The nutrient-mechanisms table has no ${nutrient}`);
  return { code: `nutrients.why-${row.key}` as Message['code'] };
};

function latestLevels(place: Place) {
  const listed = place.tests.filter((test) => test.nutrients !== undefined && test.nutrients.length > 0);
  const last = listed.reduce<(typeof listed)[number] | undefined>(
    (best, test) => (best === undefined || test.date >= best.date ? test : best),
    undefined,
  );
  return last?.nutrients ?? [];
}

/** Whether a pot holds a crop that cannot take up iron well; false when all its crops are known to be others. */
function potIron(place: Place): boolean | undefined {
  if (place.medium !== 'soilless' || place.plants.length === 0) return undefined;
  const rows = place.plants.map((plant) => potCrop(plant.name));
  if (rows.some((row) => row?.above !== undefined)) return true;
  return rows.every((row) => row !== undefined) ? false : undefined;
}

function placeMessages(place: Place, ph: Ph): readonly Message[] {
  const { medium } = place;
  const at = { value: ph, dimension: 'ph' } as const;
  const messages: Message[] = [
    { code: seriesFor(medium) === 'organic' ? 'nutrients.series-organic' : 'nutrients.series-revised' },
    { code: 'nutrients.chart-critique' },
  ];
  for (const danger of DANGERS) {
    const { word } = dangerAt(danger, ph, medium);
    if (word !== 'none') messages.push({ code: `nutrients.danger-${danger}-${word}`, parameters: { ph: at } });
  }
  if (medium === 'mineral' && ph < SOUR_MOLYBDENUM) messages.push({ code: 'nutrients.molybdenum-sour' });
  for (const plant of place.plants) {
    if (medium === 'soilless') {
      const { flag, limit, known } = potFlag(plant.name, ph);
      if (known && flag !== 'ok' && limit !== undefined)
        messages.push({
          code: flag === 'iron deficiency risk' ? 'nutrients.pot-iron-short' : 'nutrients.pot-iron-much',
          parameters: { plant: plant.name, ph: at, limit: { value: limit, dimension: 'ph' } },
        });
      continue;
    }
    const critical = medium === 'mineral' ? criticalPhs.find((row) => row.plant === plant.key) : undefined;
    if (critical !== undefined && ph < critical.ph)
      messages.push({
        code: 'nutrients.critical-ph',
        parameters: { plant: plant.name, limit: { value: critical.ph, dimension: 'ph' } },
      });
  }
  return messages;
}

import { findAnyPlant } from '@sorrel/almanac/half-known-plants';
import { findPlant } from '@sorrel/almanac/plants';
import { type SymptomCauseRow, symptomCauses } from '@sorrel/almanac/symptom-causes';
import { symptomSigns } from '@sorrel/almanac/symptom-signs';
import type { Medium } from '../soil/soil.ts';
import type { Ph } from '../units/si.ts';
import { QUESTIONS, type Question } from './questions.ts';
import type { Verdict } from './verdict.ts';

/** Causes of the key, in the order of the table. */
export const causes: readonly SymptomCauseRow[] = symptomCauses;

/** Least chance any answer has under any cause: gardeners misread leaves, so no answer rules a cause out. */
const LEAST = 0.01;

/** How often each answer is given of any plant in trouble; fills what the key does not say of a cause. */
const background = new Map(
  symptomSigns
    .filter(({ cause }) => cause === 'any')
    .map(({ question, answers }) => [question, new Map(answers.map(({ answer, share }) => [answer, share]))]),
);
const usually = (question: Question, answer: string): number => background.get(question)?.get(answer) ?? 0;

const likelihoods = new Map<string, ReadonlyMap<string, number>>();
for (const { cause, question, answers } of symptomSigns) {
  const all: readonly string[] = QUESTIONS[question];
  const given = new Map(answers.map(({ answer, share }) => [answer, share]));
  for (const answer of given.keys())
    if (!all.includes(answer)) throw new RangeError(`symptom-signs: ${cause} has no answer ${answer} to ${question}`);
  const used = [...given.values()].reduce((sum, share) => sum + share, 0);
  const open = all.reduce((sum, answer) => (given.has(answer) ? sum : sum + usually(question, answer)), 0);
  const rest = open > 0 ? Math.max(0, 1 - used) / open : 0;
  const raw = all.map((answer) => Math.max(LEAST, given.get(answer) ?? rest * usually(question, answer)));
  const total = raw.reduce((sum, each) => sum + each, 0);
  likelihoods.set(`${cause} ${question}`, new Map(all.map((answer, index) => [answer, (raw[index] ?? 0) / total])));
}

/** Chance of an answer when a cause is at work; as in any plant in trouble where the key says nothing. */
export function likelihood(cause: string, question: Question, answer: string): number {
  const row = likelihoods.get(`${cause} ${question}`);
  return row?.get(answer) ?? usually(question, answer);
}

/** Width of the step from likely to unlikely along the scale, pH units; own rule. */
const STEP = 0.25;

/**
 * How many times a pH makes a cause likelier: its strength well past its limit, one over that on the other side.
 *
 * @param crop an acid-loving plant runs short of iron as soon as the soil is limier than it likes, long before 7
 * @source limits: symptom-causes; acid-loving plants: cornell-berry-fe, and their own range; strength and width: SORREL (judgement)
 */
export function phFactor(cause: SymptomCauseRow, ph: Ph, medium: Medium, crop?: string): number {
  const pot = medium === 'soilless';
  // A limit seen in soil tells nothing of a mix unless the table has one for pots.
  const below = pot ? cause.potBelow : cause.below;
  const above = pot ? cause.potAbove : cause.key === 'Fe' ? ironLimit(cause.above, crop) : cause.above;
  if (below === undefined && above === undefined) return 1;
  const past = Math.max(
    below === undefined ? 0 : 1 / (1 + Math.exp((ph - below) / STEP)),
    above === undefined ? 0 : 1 / (1 + Math.exp((above - ph) / STEP)),
  );
  return cause.phStrength ** (2 * past - 1);
}

function ironLimit(general: Ph | undefined, crop: string | undefined): Ph | undefined {
  const row = crop === undefined ? undefined : findPlant(crop);
  return row?.reaction === 'acid-loving' && general !== undefined ? Math.min(general, row.high) : general;
}

/** How many times a verdict on the cause's own nutrient makes it likelier; own rule, a test is one sample of one day. */
const LACK: Readonly<Record<Verdict, number>> = {
  'truly short': 6,
  'enough but locked': 4,
  'enough and usable': 0.2,
  'too much': 0.15,
  'cannot tell': 1,
};
const EXCESS: Readonly<Record<Verdict, number>> = {
  'truly short': 0.2,
  'enough but locked': 0.5,
  'enough and usable': 0.6,
  'too much': 5,
  'cannot tell': 1,
};

export const testFactor = (cause: SymptomCauseRow, verdict: Verdict): number =>
  cause.kind === 'lack' ? LACK[verdict] : cause.kind === 'excess' ? EXCESS[verdict] : 1;

/** A crop the publication names makes its cause a little likelier, another crop a little less; own rule. */
const NAMED_CROP = 1.6;
const OTHER_CROP = 0.8;
/** A cause where it can hardly be: a pot trouble in the ground, clubroot on a tomato. */
const OUT_OF_PLACE = 0.02;

export function placeFactor(cause: SymptomCauseRow, medium: Medium | undefined, crop: string | undefined): number {
  if (medium !== undefined && cause.only === (medium === 'soilless' ? 'soil' : 'pot')) return OUT_OF_PLACE;
  if (crop === undefined) return 1;
  const words = cropWords(crop);
  if (cause.only === 'brassica' && !words.includes('brassica')) return OUT_OF_PLACE;
  if (cause.crops.length === 0) return 1;
  return cause.crops.some((each) => words.includes(each)) ? NAMED_CROP : OTHER_CROP;
}

const FAMILIES: Readonly<Record<string, string>> = {
  Brassicaceae: 'brassica',
  Fabaceae: 'legume',
  Poaceae: 'cereal',
};

function cropWords(crop: string): string {
  const row = findAnyPlant(crop);
  const family = row === undefined ? '' : (FAMILIES[row.family] ?? '');
  const fruit = row?.group === 'tree fruit' || row?.group === 'small fruit' ? 'fruit' : '';
  return [crop, row?.name ?? '', row?.key ?? '', family, fruit].join(' ').toLowerCase();
}

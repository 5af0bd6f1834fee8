import { type Answers, QUESTION_LIST, QUESTIONS, type Question } from './questions.ts';
import { causes, likelihood, phFactor, testFactor } from './symptom-model.ts';
import { normalised, posterior, type SymptomEvidence } from './symptoms.ts';
import type { Verdict } from './verdict.ts';

/** One thing to look at or have tested next, and how much it is expected to tell. */
export type Look =
  | { readonly kind: 'question'; readonly question: Question; readonly bits: number }
  | { readonly kind: 'ph'; readonly bits: number }
  | { readonly kind: 'soil test'; readonly nutrient: string; readonly bits: number };

/** Chance of each outcome of a soil test before it is made; own rule. */
const OUTCOMES: readonly (readonly [Verdict, number])[] = [
  ['truly short', 0.2],
  ['enough but locked', 0.15],
  ['enough and usable', 0.5],
  ['too much', 0.15],
];
/** pH a meter may show, each as likely as the next before anything is known. */
const PH_SEEN = [4.8, 5.4, 6, 6.6, 7.2, 7.8] as const;
/** A test costs money and days, so it must tell this many times as much as a look; own rule. */
const TEST_PRICE = 1.5;

/**
 * What would best tell the candidates apart: every open question, the pH if it is unknown, and a soil test of each
 * nutrient in question, by the bits its answer is expected to take off the doubt. Best first; a test goes before a look
 * only when it tells half as much again. The same entries always give the same order.
 *
 * @returns an empty list when nothing is left to ask
 * @source expected information (Shannon entropy); own rules as named
 */
export function nextLooks(answers: Answers, evidence: SymptomEvidence = {}): readonly Look[] {
  const before = posterior(answers, evidence);
  const doubt = entropy(before);
  const looks: Look[] = [];
  for (const question of QUESTION_LIST) {
    if (answers[question] !== undefined) continue;
    const tables = QUESTIONS[question].map((answer) => causes.map((cause) => likelihood(cause.key, question, answer)));
    looks.push({ kind: 'question', question, bits: gain(before, doubt, tables) });
  }
  if (evidence.ph === undefined) {
    const medium = evidence.medium ?? 'mineral';
    const tables = shares(PH_SEEN.map((ph) => causes.map((cause) => phFactor(cause, ph, medium, evidence.crop))));
    looks.push({ kind: 'ph', bits: gain(before, doubt, tables) });
  }
  const tested = new Set(evidence.verdicts?.map(({ nutrient }) => nutrient));
  const nutrients = new Set(causes.flatMap(({ nutrient }) => (nutrient === undefined ? [] : [nutrient])));
  for (const nutrient of nutrients) {
    if (tested.has(nutrient)) continue;
    const tables = shares(
      OUTCOMES.map(([verdict, base]) =>
        causes.map((cause) => base * (cause.nutrient === nutrient ? testFactor(cause, verdict) : 1)),
      ),
    );
    looks.push({ kind: 'soil test', nutrient, bits: gain(before, doubt, tables) });
  }
  return looks.sort((a, b) => worth(b) - worth(a));
}

const worth = (look: Look): number => (look.kind === 'question' ? look.bits : look.bits / TEST_PRICE);

/** Doubt in bits. */
export function entropy(chances: readonly number[]): number {
  let sum = 0;
  for (const chance of chances) if (chance > 0) sum -= chance * Math.log2(chance);
  return sum;
}

/** Outcome tables made into chances: for each cause they add up to 1. */
function shares(tables: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const totals = causes.map((_, index) => tables.reduce((sum, table) => sum + (table[index] ?? 0), 0));
  return tables.map((table) => table.map((each, index) => each / (totals[index] ?? 1)));
}

function gain(before: readonly number[], doubt: number, tables: readonly (readonly number[])[]): number {
  let left = 0;
  for (const table of tables) {
    const joint = before.map((chance, index) => chance * (table[index] ?? 0));
    const total = joint.reduce((sum, each) => sum + each, 0);
    if (total > 0) left += total * entropy(normalised(joint));
  }
  return Math.max(0, doubt - left);
}

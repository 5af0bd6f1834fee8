import type { SymptomCauseRow } from '@sorrel/almanac/symptom-causes';
import type { Basis, Recorder } from '../derivation/derivation.ts';
import type { Medium } from '../soil/soil.ts';
import type { Ph } from '../units/si.ts';
import { type Answers, isAnswer, QUESTION_LIST } from './questions.ts';
import { causes, likelihood, phFactor, placeFactor, testFactor } from './symptom-model.ts';
import type { NutrientVerdict } from './verdict.ts';

/** What is known besides the look of the plant. */
export interface SymptomEvidence {
  readonly crop?: string;
  readonly medium?: Medium;
  readonly ph?: Ph;
  readonly verdicts?: readonly Pick<NutrientVerdict, 'nutrient' | 'verdict'>[];
}

export interface Candidate {
  readonly cause: string;
  readonly name: string;
  readonly kind: SymptomCauseRow['kind'];
  readonly nutrient?: string;
  /** 0 to 1; the candidates' probabilities add up to 1. */
  readonly probability: number;
  readonly sources: readonly string[];
  readonly basis: Basis;
}

/**
 * What may lie behind what one sees, likeliest first: Bayes over the published key, each sign taken as independent of
 * the others once the cause is known, with the pH, the soil test and the crop as further evidence. Look-alikes and
 * "something else" are always among them, and no single sign rules a cause out. Ties keep the order of the table.
 *
 * @param answers what was seen; questions left out say nothing
 * @throws RangeError for an answer its question does not take, or a pH outside 0 to 14
 * @source signs: symptom-signs; chances: SORREL (judgement)
 */
export function symptomCandidates(
  answers: Answers,
  evidence: SymptomEvidence = {},
  recorder?: Recorder,
): readonly Candidate[] {
  const weights = posterior(answers, evidence);
  const found = causes
    .map(
      (cause, index): Candidate => ({
        cause: cause.key,
        name: cause.name,
        kind: cause.kind,
        ...(cause.nutrient === undefined ? {} : { nutrient: cause.nutrient }),
        probability: weights[index] ?? 0,
        sources: cause.sources,
        basis: cause.basis,
      }),
    )
    .sort((a, b) => b.probability - a.probability);
  const first = found[0];
  if (recorder && first !== undefined)
    recorder.step({
      symbol: 'p',
      title: `Chance that it is ${first.name}`,
      formula: 'weight × Π chance of each sign × factor of the pH × factor of the test, over the sum for all causes',
      terms: Object.entries(answers).flatMap(([question, answer]) =>
        answer === undefined ? [] : [{ symbol: question, value: answer, unit: '', origin: 'entered' as const }],
      ),
      value: first.probability,
      unit: '1',
      sources: [...first.sources, 'SORREL'],
      basis: 'judgement',
      note: 'The signs are published; how often each shows is judgement.',
    });
  return found;
}

/** Chances of all causes in the order of the table, adding up to 1. */
export function posterior(answers: Answers, evidence: SymptomEvidence): readonly number[] {
  const { crop, medium, ph, verdicts } = evidence;
  if (ph !== undefined && !(ph >= 0 && ph <= 14)) throw new RangeError(`pH must lie between 0 and 14, got ${ph}`);
  for (const question of QUESTION_LIST) {
    const answer = answers[question];
    if (answer !== undefined && !isAnswer(question, answer))
      throw new RangeError(`${question} has no answer "${answer}"`);
  }
  const raw = causes.map((cause) => {
    let weight = cause.weight * placeFactor(cause, medium, crop);
    if (ph !== undefined) weight *= phFactor(cause, ph, medium ?? 'mineral', crop);
    for (const verdict of verdicts ?? [])
      if (cause.nutrient === plain(verdict.nutrient)) weight *= testFactor(cause, verdict.verdict);
    for (const question of QUESTION_LIST) {
      const answer = answers[question];
      if (answer !== undefined) weight *= likelihood(cause.key, question, answer);
    }
    return weight;
  });
  return normalised(raw);
}

/** Weights made to add up to 1. */
export function normalised(weights: readonly number[]): readonly number[] {
  const total = weights.reduce((sum, each) => sum + each, 0);
  return weights.map((each) => each / total);
}

const plain = (nutrient: string): string => (nutrient === 'NO3-N' || nutrient === 'NH4-N' ? 'N' : nutrient);

import type { Message } from '@sorrel/engine/derivation';
import {
  type Answers,
  answerCode,
  type Look,
  nextLooks,
  nutrientName,
  QUESTION_LIST,
  type Question,
  questionCode,
  type SymptomEvidence,
} from '@sorrel/engine/nutrients';

/** One question with its answer; undefined where the gardener cannot tell. */
export interface Step {
  readonly question: Question;
  readonly answer: string | undefined;
}

export const answersOf = (steps: readonly Step[]): Answers =>
  Object.fromEntries(steps.flatMap(({ question, answer }) => (answer === undefined ? [] : [[question, answer]])));

/** The steps that saved answers came from, in the order of a look from the top down. */
export const stepsOf = (answers: Answers): readonly Step[] =>
  QUESTION_LIST.flatMap((question) => {
    const answer = answers[question];
    return answer === undefined ? [] : [{ question, answer }];
  });

/** Bits below which another look is not worth the walk. */
const LITTLE = 0.1;

export interface Turn {
  /** What is asked next; undefined when nothing that is left would tell much. */
  readonly ask: Question | undefined;
  /** What would tell the most of all, when that is a test and not a look. */
  readonly test: Look | undefined;
  /** A question that was passed over and would still tell much. */
  readonly again: Question | undefined;
}

/** What comes next in the conversation, the look that tells most first. */
export function turnOf(steps: readonly Step[], evidence: SymptomEvidence): Turn {
  const looks = nextLooks(answersOf(steps), evidence).filter(({ bits }) => bits >= LITTLE);
  const asked = new Set(steps.map(({ question }) => question));
  const questions = looks.flatMap((look) => (look.kind === 'question' ? [look.question] : []));
  const first = looks[0];
  return {
    ask: questions.find((question) => !asked.has(question)),
    test: first === undefined || first.kind === 'question' ? undefined : first,
    again: questions.find((question) => asked.has(question)),
  };
}

/** The test that would tell the most, as a sentence. */
export function testSaid(look: Look): Message {
  if (look.kind === 'soil test')
    return { code: 'nutrients.symptom-soil-test', parameters: { nutrient: nutrientName(look.nutrient) } };
  return { code: 'nutrients.symptom-ph' };
}

/** Question and answer as sentences. */
export const questionSaid = (question: Question): Message => ({ code: questionCode(question) });
export const answerSaid = (question: Question, answer: string): Message => ({ code: answerCode(question, answer) });

import type { SymptomSignRow } from '@sorrel/almanac/symptom-signs';
import type { MessageCode } from '@sorrel/almanac/words';

export type Question = SymptomSignRow['question'];

/** What is asked of a plant, and the answers each question takes. The order is that of a look from the top down. */
export const QUESTIONS = {
  leaves: ['older', 'middle', 'young', 'tip', 'all', 'none'],
  pattern: ['even', 'between-veins', 'edges', 'spots', 'purple', 'twisted', 'dieback', 'wilt-only'],
  spots: ['none', 'tan', 'dark'],
  growth: ['usual', 'slow', 'small-leaves', 'brittle', 'wilts'],
  roots: ['fine', 'brown', 'short', 'galls'],
  fruit: ['fine', 'end-rot', 'corky', 'poor'],
  recent: ['nothing', 'cold-wet', 'waterlogged', 'dry', 'fed', 'spray'],
} as const satisfies Readonly<Record<Question, readonly string[]>>;

export const QUESTION_LIST = Object.keys(QUESTIONS) as readonly Question[];
export type Answers = { readonly [Q in Question]?: (typeof QUESTIONS)[Q][number] | undefined };

/** Whether a word is one of a question's answers. */
export const isAnswer = (question: Question, answer: string): boolean =>
  (QUESTIONS[question] as readonly string[]).includes(answer);

/** The sentence of a question, and of one of its answers. */
export const questionCode = (question: Question): MessageCode => `nutrients.ask-${question}`;
export const answerCode = (question: Question, answer: string): MessageCode =>
  `nutrients.answer-${question}-${answer}` as MessageCode;

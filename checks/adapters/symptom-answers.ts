import type { Answers, Question } from '../../packages/engine/src/nutrients/index.ts';
import type { CheckCase } from '../adapter.ts';

type Rule = readonly [RegExp, string];

/** Words of published keys, the narrower first, as answers of ours. */
const WORDS: Readonly<Partial<Record<Question, readonly Rule[]>>> = {
  leaves: [
    [/growing point|terminal|tip|bud/, 'tip'],
    [/middle/, 'middle'],
    [/old|lower/, 'older'],
    [/young|new|upper/, 'young'],
    [/all|whole/, 'all'],
    [/none|roots/, 'none'],
  ],
  pattern: [
    [/interveinal|between/, 'between-veins'],
    [/margin|edge|scorch/, 'edges'],
    [/purpl|dark|dull/, 'purple'],
    [/twist|cup|crinkl|strap|whip|roll/, 'twisted'],
    [/die/, 'dieback'],
    [/speck|spot/, 'spots'],
    [/wilt/, 'wilt-only'],
    [/uniform|even|whole|including veins/, 'even'],
  ],
  spots: [
    [/grey|gray|tan/, 'tan'],
    [/brown|black|bronze|dark/, 'dark'],
    [/none|no\b/, 'none'],
  ],
  growth: [
    [/small|rosette|internode|tiny/, 'small-leaves'],
    [/brittle|thick|broom/, 'brittle'],
    [/wilt/, 'wilts'],
    [/slow|stunt|thin|dwarf|weak/, 'slow'],
    [/normal|usual/, 'usual'],
  ],
  roots: [
    [/gall|club|knot/, 'galls'],
    [/short|stubby/, 'short'],
    [/brown|rot|soft/, 'brown'],
    [/fine|white|healthy/, 'fine'],
  ],
  fruit: [
    [/end.?rot|tipburn/, 'end-rot'],
    [/cork|hollow|crack/, 'corky'],
    [/poor|few|small/, 'poor'],
    [/fine/, 'fine'],
  ],
};

/** Inputs whose name is not that of our question. */
const QUESTION_OF: Readonly<Record<string, Question>> = { leaf: 'leaves', leaf_position: 'leaves' };

/** Answers to the symptom key from the words of a case. Words that fit no answer are an error, never passed over. */
export function answersOf(inputs: CheckCase['inputs']): Answers {
  const answers: Record<string, string> = {};
  for (const [key, value] of Object.entries(inputs)) {
    const question = QUESTION_OF[key] ?? (key in WORDS ? (key as Question) : undefined);
    if (question === undefined) continue;
    if (value === false) answers[question] = 'none';
    else if (value === true) answers[question] = 'dark';
    else {
      const words = String(value).toLowerCase();
      const answer = WORDS[question]?.find(([pattern]) => pattern.test(words))?.[1];
      if (answer === undefined) throw new Error(`${key}: "${words}" fits no answer`);
      answers[question] = answer;
    }
  }
  return answers;
}

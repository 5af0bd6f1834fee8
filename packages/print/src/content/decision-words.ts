import type { MessageCode } from '@sorrel/almanac/words';
import type { Decision } from '@sorrel/engine/plan';
import type { Speaker } from '../speaker.ts';

const codes: Readonly<Record<Decision, string>> = {
  'leave alone': 'leave',
  raise: 'raise',
  lower: 'lower',
  'not practical': 'not-practical',
  'grow something else': 'grow-else',
  'find out first': 'find-out',
};

// The test of the words holds that each decision has both.
/** What is decided, as a heading. */
export const decisionOf = (decision: Decision, speaker: Speaker): string =>
  speaker.word(`print.decision-${codes[decision]}` as MessageCode);

/** What is decided, in a word or two beside a row. */
export const verdictOf = (decision: Decision, speaker: Speaker): string =>
  speaker.word(`print.verdict-${codes[decision]}` as MessageCode);

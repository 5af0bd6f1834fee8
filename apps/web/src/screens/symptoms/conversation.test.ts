import { describe, expect, it } from 'vitest';
import { answersOf, type Step, stepsOf, turnOf } from './conversation.ts';

describe('the conversation', () => {
  it('begins with the question that tells most, and never asks one twice', () => {
    let steps: readonly Step[] = [];
    const asked: string[] = [];
    for (let turn = turnOf(steps, {}); turn.ask !== undefined; turn = turnOf(steps, {})) {
      asked.push(turn.ask);
      steps = [...steps, { question: turn.ask, answer: undefined }];
    }
    expect(asked[0]).toBe('pattern');
    expect(new Set(asked).size).toBe(asked.length);
    // Nothing was answered, so what was passed over would still tell much.
    expect(turnOf(steps, {}).again).toBe('pattern');
  });

  it('asks for the pH or a test when that tells more than a look, and not for a pH that is known', () => {
    const steps: Step[] = [
      { question: 'leaves', answer: 'young' },
      { question: 'pattern', answer: 'between-veins' },
      { question: 'spots', answer: 'none' },
      { question: 'growth', answer: 'slow' },
      { question: 'roots', answer: 'fine' },
      { question: 'fruit', answer: 'fine' },
      { question: 'recent', answer: 'nothing' },
    ];
    const { ask, test } = turnOf(steps, {});
    expect(ask).toBeUndefined();
    expect(test?.kind).toMatch(/ph|soil test/);
    expect(turnOf(steps, { ph: 7.8 }).test?.kind).not.toBe('ph');
  });

  it('keeps what was answered and forgets what nobody could tell', () => {
    const steps: Step[] = [
      { question: 'pattern', answer: 'even' },
      { question: 'spots', answer: undefined },
    ];
    expect(answersOf(steps)).toEqual({ pattern: 'even' });
    expect(stepsOf({ pattern: 'even', leaves: 'older' })).toEqual([
      { question: 'leaves', answer: 'older' },
      { question: 'pattern', answer: 'even' },
    ]);
  });
});

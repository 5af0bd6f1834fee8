import { symptomSigns } from '@sorrel/almanac/symptom-signs';
import { en } from '@sorrel/almanac/words';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { entropy, nextLooks } from './next-look.ts';
import { type Answers, answerCode, QUESTION_LIST, QUESTIONS, questionCode } from './questions.ts';
import { causes, likelihood } from './symptom-model.ts';
import { type SymptomEvidence, symptomCandidates } from './symptoms.ts';

const first = (answers: Answers, evidence: SymptomEvidence = {}) => symptomCandidates(answers, evidence)[0]?.cause;
const chance = (cause: string, answers: Answers, evidence: SymptomEvidence = {}) =>
  symptomCandidates(answers, evidence).find((one) => one.cause === cause)?.probability ?? Number.NaN;

const anyAnswers: fc.Arbitrary<Answers> = fc.record(
  Object.fromEntries(QUESTION_LIST.map((question) => [question, fc.constantFrom(...QUESTIONS[question])])),
  { requiredKeys: [] },
) as fc.Arbitrary<Answers>;
const anyEvidence: fc.Arbitrary<SymptomEvidence> = fc.record(
  {
    ph: fc.double({ min: 0, max: 14, noNaN: true }),
    medium: fc.constantFrom('mineral' as const, 'organic' as const, 'mix' as const, 'soilless' as const),
    crop: fc.constantFrom('cabbage', 'tomato', 'nothing known'),
    verdicts: fc.array(
      fc.record({
        nutrient: fc.constantFrom('N', 'P', 'Fe', 'Mn', 'NO3-N'),
        verdict: fc.constantFrom('enough and usable' as const, 'truly short' as const, 'too much' as const),
      }),
      { maxLength: 4 },
    ),
  },
  { requiredKeys: [] },
);

describe('the symptom key', () => {
  // Published keys: key-green (Fe, Mn, Zn, Cu), lucid-boron, mo-grower, cimmyt-mobility (S), umd-2008 and canr-substrate
  // (pots), clubroot-ca; symptom-text (memory) for the rest.
  it.each<[string, Answers, SymptomEvidence]>([
    ['Fe', { leaves: 'young', pattern: 'between-veins', spots: 'none' }, {}],
    ['Mn', { leaves: 'young', pattern: 'between-veins', spots: 'tan' }, {}],
    ['Mg', { leaves: 'older', pattern: 'between-veins' }, {}],
    ['N', { leaves: 'older', pattern: 'even' }, {}],
    ['K', { leaves: 'older', pattern: 'edges' }, {}],
    ['P', { leaves: 'older', pattern: 'purple' }, {}],
    ['Zn', { leaves: 'young', growth: 'small-leaves' }, {}],
    ['B', { leaves: 'tip', pattern: 'dieback', growth: 'brittle' }, {}],
    ['Ca', { leaves: 'tip', fruit: 'end-rot' }, { crop: 'tomato' }],
    ['Mo', { leaves: 'older', pattern: 'twisted' }, { crop: 'cauliflower', ph: 5 }],
    [
      'fe-mn-toxicity',
      { leaves: 'older', spots: 'dark' },
      { crop: 'New Guinea impatiens', ph: 4.6, medium: 'soilless' },
    ],
    ['clubroot', { roots: 'galls', growth: 'wilts' }, { crop: 'cabbage' }],
    ['nematodes', { roots: 'galls', growth: 'wilts' }, { crop: 'tomato' }],
    ['al-toxicity', { roots: 'short' }, { ph: 4.6 }],
    ['waterlogging', { roots: 'brown', pattern: 'even' }, {}],
    ['cold', { leaves: 'young', pattern: 'even', recent: 'cold-wet' }, {}],
  ])('puts %s first', (cause, answers, evidence) => expect(first(answers, evidence)).toBe(cause));

  it('takes the pH and the test as evidence', () => {
    const pale: Answers = { leaves: 'young', pattern: 'between-veins' };
    expect(chance('Fe', pale, { ph: 7.8 })).toBeGreaterThan(chance('Fe', pale, { ph: 5.8 }));
    const tested = (verdict: 'truly short' | 'enough and usable') => ({ verdicts: [{ nutrient: 'Fe', verdict }] });
    expect(chance('Fe', pale, tested('truly short'))).toBeGreaterThan(chance('Fe', pale));
    expect(chance('Fe', pale, tested('enough and usable'))).toBeLessThan(chance('Fe', pale));
  });

  // cornell-berry-fe: above 5.2 blueberries cannot use iron; other plants stand far more.
  it('thinks of iron sooner in an acid-loving plant', () => {
    const pale: Answers = { pattern: 'between-veins' };
    expect(chance('Fe', pale, { ph: 6, crop: 'blueberry' })).toBeGreaterThan(
      chance('Fe', pale, { ph: 6, crop: 'bean' }),
    );
    expect(chance('Fe', pale, { ph: 4.6, crop: 'blueberry' })).toBeLessThan(0.2);
  });

  it('gives chances that add up to one, none of them nothing, whatever is known', () => {
    fc.assert(
      fc.property(anyAnswers, anyEvidence, (answers, evidence) => {
        const found = symptomCandidates(answers, evidence);
        expect(found).toHaveLength(causes.length);
        expect(found.reduce((sum, one) => sum + one.probability, 0)).toBeCloseTo(1, 9);
        for (const { probability } of found) expect(probability).toBeGreaterThan(0);
        for (const [a, b] of found.slice(1).map((one, index) => [found[index], one] as const))
          expect(a?.probability).toBeGreaterThanOrEqual(b.probability);
      }),
    );
  });

  it('keeps look-alikes and something else among the candidates', () => {
    const kinds = new Map(symptomCandidates({}).map((one) => [one.cause, one.kind]));
    for (const key of ['cold', 'waterlogging', 'salt', 'nematodes', 'other']) expect(kinds.get(key)).toBe('look-alike');
  });

  it('refuses an answer the question does not take', () =>
    expect(() => symptomCandidates({ leaves: 'blue' } as unknown as Answers)).toThrow(RangeError));

  it('has a cause for each row of signs, chances that add up to one, and words for everything asked', () => {
    const keys = new Set([...causes.map(({ key }) => key), 'any']);
    for (const { cause } of symptomSigns) expect(keys.has(cause), cause).toBe(true);
    for (const question of QUESTION_LIST) {
      expect(en[questionCode(question)]).toBeTruthy();
      for (const answer of QUESTIONS[question]) expect(en[answerCode(question, answer)], answer).toBeTruthy();
      for (const { key } of causes) {
        const total = QUESTIONS[question].reduce((sum, answer) => sum + likelihood(key, question, answer), 0);
        expect(total, `${key} ${question}`).toBeCloseTo(1, 9);
      }
    }
  });
});

describe('the next look', () => {
  it('asks for what tells most: pattern first of all, then never again', () => {
    expect(nextLooks({})[0]).toMatchObject({ kind: 'question', question: 'pattern' });
    fc.assert(
      fc.property(anyAnswers, anyEvidence, (answers, evidence) => {
        const looks = nextLooks(answers, evidence);
        for (const look of looks) {
          expect(Number.isFinite(look.bits)).toBe(true);
          expect(look.bits).toBeGreaterThanOrEqual(0);
          if (look.kind === 'question') expect(answers[look.question]).toBeUndefined();
        }
        expect(nextLooks(answers, evidence)).toEqual(looks);
      }),
      { numRuns: 50 },
    );
  });
  it('tells iron from manganese by the spots, the sign the published key parts them by (key-green)', () => {
    const looks = nextLooks({
      leaves: 'young',
      pattern: 'between-veins',
      growth: 'usual',
      roots: 'fine',
      recent: 'nothing',
    });
    expect(looks.find((look) => look.kind === 'question')).toMatchObject({ question: 'spots' });
  });
  it('expects no more bits than there is doubt', () => {
    fc.assert(
      fc.property(anyAnswers, (answers) => {
        const doubt = entropy(symptomCandidates(answers).map((one) => one.probability));
        for (const look of nextLooks(answers)) expect(look.bits).toBeLessThanOrEqual(doubt + 1e-9);
      }),
      { numRuns: 50 },
    );
  });
});

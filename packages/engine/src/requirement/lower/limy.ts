import { acidificationParameter } from '@sorrel/almanac/acidification-parameters';
import type { Message } from '../../derivation/message.ts';
import { carbonateOf } from '../../evidence/carbonate.ts';
import type { SoilTest } from '../../evidence/soil-test.ts';
import { TEST_FOR_LIME_FROM } from '../../soil/free-lime.ts';
import type { MethodInput } from '../method.ts';

/** Soil with no more carbonate than this (kg/kg) still answers as the tables say. */
const WORKABLE = acidificationParameter('workable carbonate').value / 100;

/** What is known of free lime, as far as a rate for lime-free soil is concerned. */
export function limeKnown({ test }: Pick<MethodInput, 'test'>): 'none' | 'some' | 'unknown' {
  let answer = answers.get(test);
  if (answer === undefined) {
    answer = lookedAt(test);
    answers.set(test, answer);
  }
  return answer;
}

/** A dozen tables ask it of the same test. */
const answers = new WeakMap<SoilTest, 'none' | 'some' | 'unknown'>();

function lookedAt(test: SoilTest): 'none' | 'some' | 'unknown' {
  if (test.carbonate === undefined && test.acidFizz === undefined && test.vinegarFizz === undefined) return 'unknown';
  const { how, fraction } = carbonateOf([test]);
  if (how === 'not tested') return 'unknown';
  return fraction > WORKABLE ? 'some' : 'none';
}

/**
 * Why a rate for lime-free soil may not be read here, if so: free lime was found, or the pH is above 7.2 and nobody looked.
 *
 * @source acidification note, sections 2 and 4; limits judgement (SORREL)
 */
export function limyReason(input: MethodInput, table: string): Message | undefined {
  const lime = limeKnown(input);
  if (lime === 'some') return { code: 'lower.free-lime', parameters: { table } };
  return lime === 'unknown' && input.present.mean > TEST_FOR_LIME_FROM
    ? { code: 'lower.carbonate-test-first', parameters: { limit: TEST_FOR_LIME_FROM } }
    : undefined;
}

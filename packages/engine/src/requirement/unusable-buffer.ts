import type { Message } from '../derivation/message.ts';
import type { BufferMethod } from '../evidence/soil-test.ts';

const named = (buffer: string): Message => ({ code: 'requirement.outside-buffer', parameters: { buffer } });

/**
 * Buffers for which no trusted calibration was recovered. A buffer pH means nothing without its own table: the same
 * soil can read 6.4 in one and 5.8 in another (PaganiMallarino2012). The original Woodruff strongly underestimates
 * (BrownCisco1984).
 */
const reasons: Readonly<Partial<Record<BufferMethod, Message>>> = {
  'sikora-2': named('Sikora-2'),
  'moore-sikora': named('Moore-Sikora'),
  woodruff: named('Woodruff'),
  'modified-woodruff': named('modified Woodruff'),
};
const ASK_ACIDITY: Message = { code: 'requirement.outside-buffer-acidity' };

/**
 * Why a buffer pH cannot be used, and what to ask the laboratory for instead; undefined when it can be.
 *
 * @param hasAcidity whether the report also gives the exchangeable acidity, which the modified Mehlich rules read
 */
export function unusableBuffer(method: BufferMethod, hasAcidity: boolean): Message | undefined {
  if (method === 'modified-mehlich') return hasAcidity ? undefined : ASK_ACIDITY;
  return reasons[method];
}

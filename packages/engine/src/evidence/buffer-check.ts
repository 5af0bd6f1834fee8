import { bufferOf } from '@sorrel/almanac/buffers';
import type { Problem } from '../derivation/problem.ts';
import type { Ph } from '../units/si.ts';
import type { BufferMethod } from './soil-test.ts';

/** How far a meter may carry a reading past the buffer's own pH before it is called a mistake. Our judgement. */
const METER = 0.1;

export interface BufferRange {
  readonly name: string;
  /** Lowest reading that makes sense. */
  readonly lowest: Ph;
  /** pH of the buffer before soil is added: no acid soil can read higher. */
  readonly start: Ph;
}

/** Range a buffer pH can lie in. Basis and sources stand in the almanac table `buffers`; Sikora and Woodruff are from memory. */
export function bufferRange(method: BufferMethod): BufferRange {
  const row = bufferOf(method);
  return { name: row.name, lowest: row.lowest_ph, start: row.start_ph };
}

/**
 * What is wrong with a buffer pH: it cannot lie above the buffer's own pH (0.1 is left for the meter), nor far below.
 *
 * @param field path of the field as the person wrote it
 */
export function checkBuffer(value: Ph, method: BufferMethod, field: string, place?: string): Problem | undefined {
  const { name, lowest, start } = bufferRange(method);
  const at = place === undefined ? {} : { place };
  if (value > start + METER)
    return {
      ...at,
      code: 'evidence.buffer-above-itself',
      field,
      value,
      message: `A ${name} buffer pH of ${value} is not possible: the buffer itself starts at ${start} and acid soil only lowers it.`,
      fix:
        value >= 40 && value <= (start + METER) * 10
          ? `If the report prints a lime index (buffer pH times 10), enter ${value / 10}.`
          : 'Check which buffer the laboratory used, or whether this is the soil pH.',
    };
  if (value < lowest)
    return {
      ...at,
      code: 'evidence.buffer-too-low',
      field,
      value,
      message: `A ${name} buffer pH of ${value} is below ${lowest}, the lowest that soils give.`,
      fix: 'Check the figure on the report, and which buffer the laboratory used.',
    };
  return undefined;
}

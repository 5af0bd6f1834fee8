import type { Metre } from '../units/si.ts';
import { curveLeft, type SizeClass } from './sieve-classes.ts';

/** Steps of a table; they stand on the square root of the loss, so that fine grains are resolved too. */
export const STEPS = 512;

/**
 * `curveLeft` of one material, tabulated from no loss to the loss at which its coarsest grain is gone.
 * Every grain of a material loses the same diameter in the same time, so one number a member (the loss so far) tells
 * how much of the whole sieve curve is left, however many classes it has.
 */
export interface LossTable {
  /** Loss at which nothing is left, m. */
  readonly end: Metre;
  /** Share left at `end · (i/STEPS)²`, i from 0 to STEPS + 1. Falls from 1 to 0. */
  readonly left: Float64Array;
}

export function lossTable(classes: readonly SizeClass[]): LossTable {
  const end = classes.reduce((most, size) => Math.max(most, size.to), 0);
  const left = new Float64Array(STEPS + 2);
  for (let i = 0; i < STEPS; i++) left[i] = curveLeft(classes, end * (i / STEPS) ** 2);
  return { end, left };
}

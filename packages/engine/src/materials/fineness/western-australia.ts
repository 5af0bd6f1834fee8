import type { Fraction } from '../../units/si.ts';

/** A size class with its own measured neutralising value. */
export interface MeasuredClass {
  readonly share: Fraction;
  readonly neutralisingValue: Fraction;
  /** 0.2 above 1 mm, 0.5 from 0.5 to 1 mm, 1 below 0.5 mm. */
  readonly factor: number;
}

/**
 * Western Australian effective proportion: `EP = sum(share · NV of the class · factor)`, a fraction.
 *
 * @source WALIME
 */
export function effectiveProportion(classes: readonly MeasuredClass[]): Fraction {
  let sum = 0;
  for (const { share, neutralisingValue, factor } of classes) sum += share * neutralisingValue * factor;
  return sum;
}

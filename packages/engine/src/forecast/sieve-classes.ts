import type { Sieve } from '../materials/material.ts';
import type { Fraction, Metre } from '../units/si.ts';

/** A size class: its mass is spread evenly over the logarithm of diameter between the limits. */
export interface SizeClass {
  readonly from: Metre;
  readonly to: Metre;
  readonly share: Fraction;
}

/** Finest grain of the class below the finest screen, relative to that screen: 75 µm passes from about 10 µm. */
const FINEST = 1 / 8;
/** Coarsest grain above the coarsest screen, relative to it. */
const COARSEST = 2;

/**
 * Size classes of a sieve curve, coarse to fine. Screens may come in any order; the share passing must not rise as the
 * screens get finer. Material over the coarsest screen is taken up to twice its opening.
 */
export function sizeClasses(sieves: readonly Sieve[]): SizeClass[] {
  const sorted = [...sieves].sort((a, b) => b.opening - a.opening);
  const first = sorted[0];
  if (first === undefined) throw new RangeError('a sieve curve needs at least one screen');
  const classes: SizeClass[] = [];
  let above: Sieve = { opening: first.opening * COARSEST, passing: 1 };
  for (const sieve of sorted) {
    const share = above.passing - sieve.passing;
    if (share < -1e-9) throw new RangeError('the share passing rises as the screens get finer');
    if (share > 0) classes.push({ from: sieve.opening, to: above.opening, share });
    above = sieve;
  }
  if (above.passing > 0) classes.push({ from: above.opening * FINEST, to: above.opening, share: above.passing });
  return classes;
}

/** ∫ (1 − x/s)³ ds/s, the mass left of grains of diameter s after a loss x of diameter. */
const integral = (s: number, x: number): number =>
  Math.log(s) + (3 * x) / s - (3 * x ** 2) / (2 * s ** 2) + x ** 3 / (3 * s ** 3);

/**
 * Share of a class left after all its grains lost `loss` of diameter (surface-area law):
 * the mean of `(1 − x/d)³` over mass spread evenly in log d, exactly. Falls from 1 to 0, never below.
 *
 * @param loss x, m, 0 and more
 * Source: WB93 for the law; HUA07 for the same law in limestone.
 */
export function shareLeft(size: Pick<SizeClass, 'from' | 'to'>, loss: Metre): Fraction {
  if (loss <= 0) return 1;
  if (loss >= size.to) return 0;
  if (size.to / size.from < 1 + 1e-9) return (1 - loss / size.to) ** 3;
  const from = Math.max(size.from, loss);
  const left = (integral(size.to, loss) - integral(from, loss)) / Math.log(size.to / size.from);
  return Math.min(1, Math.max(0, left));
}

/** Share of a whole sieve curve left after a loss of diameter. */
export function curveLeft(classes: readonly SizeClass[], loss: Metre): Fraction {
  let left = 0;
  for (const size of classes) left += size.share * shareLeft(size, loss);
  return left;
}

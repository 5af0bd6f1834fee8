/**
 * A week moves pH little, so a member's next logarithm and exponential follow from its last ones by short series, at a
 * third of the cost of `Math.log` and `Math.exp`. The first terms left out are 2s⁵/5 < 1.2e-11 of the logarithm and
 * u⁶/720 < 4e-12 of the exponential at the end of their reach, and a thousandth of that in a usual week; a test holds them
 * to it.
 */

/** Largest change of pH that the series take, less where w is under 1. Beyond it the kernel asks `Math`. */
const REACH_PH = 1 / 64;

/** Largest |s| at width w for which `logOfRatio(s)`, and the exponential of the change of pH it gives, are good. */
export function reachOf(w: number): number {
  return REACH_PH / 2 / Math.max(1, w);
}

/** ln(a/b) of two numbers close together, from `s = (a − b)/(a + b)`: `2 artanh(s)`, its first two terms. */
export function logOfRatio(s: number): number {
  return 2 * s * (1 + s * s * (1 / 3));
}

/** Even part of the series of exp(u), from u²: `exp(u) = even + odd`, `exp(−u) = even − odd`. */
export function evenPart(u2: number): number {
  return 1 + u2 * (1 / 2 + u2 * (1 / 24));
}

/** Odd part of the series of exp(u). */
export function oddPart(u: number, u2: number): number {
  return u * (1 + u2 * (1 / 6 + u2 * (1 / 120)));
}

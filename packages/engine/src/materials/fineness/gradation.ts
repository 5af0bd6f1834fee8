import type { Fraction, Metre } from '../../units/si.ts';
import type { Sieve } from '../material.ts';
import { sameScreen } from './screen.ts';

/** Share of a product between two screens; a missing bound is open. */
export interface SizeShare {
  readonly finerThan?: Metre;
  readonly coarserThan?: Metre;
  readonly share: Fraction;
}

/** What passes any screen, with a note of screens beyond those that were tested. */
export type Passing = (opening: Metre) => Fraction;

/**
 * Share that passes any opening, from the screens that were tested: linear in the logarithm of the opening.
 * All stone is taken to pass screens coarser than the coarsest tested one, and what passes the finest tested one to pass
 * any finer screen: both count the stone as finer, so that the dose comes out smaller.
 *
 * @param sieves at least one, openings in m (> 0), passing 0 to 1; any order
 * @source rule of the materials note, section 3 (SORREL)
 */
export function passingOf(sieves: readonly Sieve[]): Passing {
  const sorted = [...sieves].sort((a, b) => b.opening - a.opening);
  return (opening) => {
    let coarser: Sieve | undefined;
    for (const sieve of sorted) {
      if (sameScreen(sieve.opening, opening)) return sieve.passing;
      if (sieve.opening < opening) {
        if (coarser === undefined) return 1;
        const along = Math.log(coarser.opening / opening) / Math.log(coarser.opening / sieve.opening);
        return coarser.passing + (sieve.passing - coarser.passing) * along;
      }
      coarser = sieve;
    }
    return coarser?.passing ?? 1;
  };
}

/** Screens from printed class shares: what passes a bound is the sum of the finer classes, nothing rescaled. */
export function sievesOf(shares: readonly SizeShare[]): Sieve[] {
  const bounds = new Set<Metre>();
  for (const { finerThan, coarserThan } of shares) {
    if (finerThan !== undefined) bounds.add(finerThan);
    if (coarserThan !== undefined) bounds.add(coarserThan);
  }
  return [...bounds]
    .sort((a, b) => b - a)
    .map((opening) => {
      let passing = 0;
      for (const { finerThan, share } of shares)
        if (finerThan !== undefined && (finerThan <= opening || sameScreen(finerThan, opening))) passing += share;
      return { opening, passing };
    });
}

/** Screens from what stays on each screen of a stack; the pan (what passes all) may be left out. Source: AOAC 924.02 (memory). */
export function sievesFromRetained(
  retained: readonly { readonly opening: Metre; readonly share: Fraction }[],
): Sieve[] {
  let passing = 1;
  return [...retained]
    .sort((a, b) => b.opening - a.opening)
    .map(({ opening, share }) => {
      passing -= share;
      return { opening, passing };
    });
}

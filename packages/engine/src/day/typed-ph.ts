import type { Ph } from '../units/si.ts';

/** What a typed pH is worth. */
export type TypedPh =
  | { readonly kind: 'empty' | 'no-number' | 'outside' }
  /** A figure whose decimal sign seems to be missing. */
  | { readonly kind: 'no-point'; readonly meant: Ph }
  /** Possible, but so rare that it should be looked at once more. */
  | { readonly kind: 'unusual'; readonly ph: Ph }
  | { readonly kind: 'good'; readonly ph: Ph };

/** Beyond these a professional is asked first, so a slip of the finger should not get there. */
const USUAL = { low: 4, high: 8.5 };

/**
 * Reads a pH as somebody types it beside a meter, with a point or a comma.
 *
 * @returns `good` from 4 to 8.5, `unusual` on to 0 and 14, `no-point` for figures such as 64 or 643
 * @source limits of the usual: practice, refer-out list (from memory)
 */
export function typedPh(text: string): TypedPh {
  const plain = text.trim().replace(',', '.');
  if (plain === '') return { kind: 'empty' };
  if (!/^[+-]?(\d+\.?\d*|\.\d+)$/.test(plain)) return { kind: 'no-number' };
  const ph = Number(plain);
  if (/^\d{2,3}$/.test(plain) && ph > 14) {
    const meant = Number(`${plain[0]}.${plain.slice(1)}`);
    return meant >= USUAL.low && meant <= USUAL.high ? { kind: 'no-point', meant } : { kind: 'outside' };
  }
  if (ph < 0 || ph > 14) return { kind: 'outside' };
  return { kind: ph < USUAL.low || ph > USUAL.high ? 'unusual' : 'good', ph };
}

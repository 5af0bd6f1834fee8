import type { Message } from '../derivation/message.ts';
import type { BufferCurve } from '../soil/soil.ts';
import type { Reading } from './method.ts';

export interface Reconciled {
  /** Undefined when nothing but a pH is known: there is no rate, only what to find out next. */
  readonly curve?: BufferCurve;
  /** Readings that speak, one a kind of evidence. */
  readonly used: readonly Reading[];
  /** Further readings of a kind that already spoke, shown for comparison. */
  readonly beside: readonly Reading[];
  readonly outside: readonly { readonly method: string; readonly reason: Message }[];
  /** True when the readings differ by more than their errors explain (chi-square, 5 %). */
  readonly disagree: boolean;
  /** What to find out next to narrow the answer, best first. */
  readonly ask: readonly Message[];
}

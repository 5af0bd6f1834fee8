import type { CheckCase } from './adapter.ts';

/** How the expected figure of a case came about; only `read` ones make the headline. */
export type BasisClass = 'read' | 'memory' | 'derived';

/** What a note says when the expected figure itself was not on the page: ours, corrected, inferred or interpolated. */
const ours =
  /\b(arithmetic|example|instance|rule)( is)? ours\b|chosen by us|computed from|derived from|correct value expected|misprint|rounded wrongly|\binferred\b|interpolat/i;

/**
 * Sorts a case by its basis, strictly: `read` only when the row says just that and its note does not say that the
 * expected figure is ours; anything from memory, in part or whole, is `memory`; the rest is `derived`.
 */
export function basisClass({ basis, note }: Pick<CheckCase, 'basis' | 'note'>): BasisClass {
  const read = basis.trim().toLowerCase() === 'read';
  if (/memory/i.test(basis) || (read && /from memory/i.test(note))) return 'memory';
  return read && !ours.test(note) ? 'read' : 'derived';
}

import { changeColumn, type Proposal } from '@sorrel/intake';

/** Title of the column that is taken for the code on the bag. */
export const codeColumn = ({ columns }: Proposal): string | undefined =>
  columns.find(({ means }) => means === 'place')?.title;

/**
 * A proposal whose column of codes is the one in which codes of this day stand. A laboratory calls that column what it
 * likes, and often has a number of its own beside it.
 *
 * @param codes checked in
 */
export function withCodes(proposal: Proposal, codes: readonly string[]): Proposal {
  const known = new Set(codes.map((code) => code.toLowerCase()));
  const hits = proposal.columns.map(({ title, means, examples }) => ({
    title,
    means,
    count: examples.filter((cell) => known.has(cell.trim().toLowerCase())).length,
  }));
  const best = hits.reduce((a, b) => (b.count > a.count ? b : a), { title: '', means: '', count: 0 });
  const now = hits.find(({ means }) => means === 'place');
  if (best.count === 0 || (now?.count ?? 0) > 0) return proposal;
  const changed = changeColumn(proposal, best.title, { means: 'place' });
  return changed.ok ? changed.proposal : proposal;
}

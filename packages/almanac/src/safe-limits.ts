import type { LimitGroup } from '../schemas/limit-groups.ts';
import { type Row, rows } from './generated/safe-limits.ts';

export type SafeLimitRow = Row;
/** Published limits for one application, and which of them is the default. */
export const safeLimits: readonly SafeLimitRow[] = rows;

export type { LimitGroup };

/** Where the material goes, as far as the limits differ. */
export type LimitSituation = 'open ground' | 'around plants' | 'lawn' | 'greens' | 'container';

const defaults = new Map<string, Map<string, SafeLimitRow>>();
for (const row of rows) {
  if (!row.default) continue;
  const group = defaults.get(row.group) ?? new Map<string, SafeLimitRow>();
  defaults.set(row.group, group.set(row.situation, row));
}

/**
 * The default limit: the lowest figure published for the group in that situation.
 *
 * @returns `undefined` when nobody published one: then no dose should be offered there
 */
export const limitFor = (group: LimitGroup, situation: LimitSituation): SafeLimitRow | undefined =>
  defaults.get(group)?.get(situation);

import { anonymous } from '@sorrel/engine/day';
import { type Cell, csvText } from '../csv.ts';
import type { DaySample } from './day-sample.ts';

const columns = ['ph', 'decision', 'neighbourhood'] as const;

/**
 * The samples as they may be given to others, as CSV (RFC 4180): no code, name, place or date, sorted by pH, and no
 * neighbourhood with so few samples that it could point at a person.
 */
export const anonymousTable = (samples: readonly DaySample[]): string =>
  csvText(
    columns,
    anonymous(samples).map(({ ph, decision, neighbourhood }): Cell[] => [ph, decision, neighbourhood]),
  );

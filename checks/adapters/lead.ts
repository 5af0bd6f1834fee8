import { type LeadLevelRow, leadLevel } from '@sorrel/almanac/lead-levels';
import type { Adapter } from '../adapter.ts';

/** Which of the almanac's levels a key of the case files means. */
const levels: readonly (readonly [RegExp, LeadLevelRow['level']])[] = [
  [/^above_screening/, 'refer'],
  [/^above_removal/, 'removal'],
  [/^above_(?:old_)?400$/, 'no food'],
];
const levelOf = (key: string) => levels.find(([pattern]) => pattern.test(key))?.[1];

/** Total lead against the almanac's dated levels. */
export const lead: readonly Adapter[] = [
  {
    name: 'lead levels',
    accepts: ({ inputs, expected }) =>
      typeof inputs.lead_ppm === 'number' && Object.keys(expected).every((key) => levelOf(key) !== undefined),
    compute: ({ inputs, expected }) =>
      Object.fromEntries(
        Object.keys(expected).map((key) => {
          const level = levelOf(key);
          return [key, level !== undefined && Number(inputs.lead_ppm) * 1e-6 > leadLevel(level)];
        }),
      ),
  },
];

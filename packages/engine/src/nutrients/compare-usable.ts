import type { Message } from '../derivation/message.ts';
import type { Medium } from '../soil/soil.ts';
import type { Ph } from '../units/si.ts';
import { type Series, seriesFor, usability } from './availability.ts';
import { isLockable, NUTRIENT_NAMES, type Nutrient } from './nutrient.ts';

/** How the same nutrient compares at two pH: how many times as usable, with the band the table's uncertainty leaves. */
export interface Compared {
  readonly nutrient: Nutrient;
  readonly series: Series;
  readonly times: number;
  readonly low: number;
  readonly high: number;
  /** Whether the band leaves out 1, so that a difference may be spoken of at all. */
  readonly clear: boolean;
}

/** Below this a share is taken as this, so that a ratio stays finite. */
const FLOOR = 0.02;

/**
 * Usability at one pH over that at another, by the same line. The uncertainties of both ends are taken as independent
 * shares and combined by their squares on the log scale; about 2 chances in 3.
 *
 * @source own rule (SORREL) on the almanac's `availability`
 */
export function compareUsable(
  nutrient: Nutrient,
  from: Ph,
  to: Ph,
  medium: Medium,
  series: Series = seriesFor(medium),
): Compared {
  const [a, b] = [usability(nutrient, from, medium, series), usability(nutrient, to, medium, series)];
  const [ra, rb] = [Math.max(a.relative, FLOOR), Math.max(b.relative, FLOOR)];
  const times = ra / rb;
  // The table's figure is a bound for one end; half of it is taken as a standard deviation.
  const spread = (high: number, low: number, middle: number) => (high - low) / 4 / middle;
  const sd = Math.hypot(spread(a.high, a.low, ra), spread(b.high, b.low, rb));
  const [low, high] = [times * Math.exp(-sd), times * Math.exp(sd)];
  return { nutrient, series, times, low, high, clear: low > 1 || high < 1 };
}

type Amount = 'much-less' | 'half' | 'somewhat-less' | 'same' | 'somewhat-more' | 'twice' | 'much-more';

function amountOf({ times, clear }: Compared): Amount {
  if (!clear) return 'same';
  if (times < 1) return times < 0.35 ? 'much-less' : times < 0.65 ? 'half' : 'somewhat-less';
  return times > 1 / 0.35 ? 'much-more' : times > 1 / 0.65 ? 'twice' : 'somewhat-more';
}

/**
 * What moving the pH would do for one nutrient, in sentences: how usable it is today against the planned pH, as far as
 * the table supports it, and where the old chart says something else.
 *
 * @param today pH now; @param planned pH the plan leads to
 */
export function usableSentences(nutrient: Nutrient, today: Ph, planned: Ph, medium: Medium): readonly Message[] {
  const compared = compareUsable(nutrient, today, planned, medium);
  const amount = amountOf(compared);
  const parameters = {
    nutrient: NUTRIENT_NAMES[nutrient],
    today: { value: today, dimension: 'ph' },
    planned: { value: planned, dimension: 'ph' },
  } as const;
  const said: Message[] = [{ code: `nutrients.usable-${amount}`, parameters }];
  if (side(amount) < 0 && isLockable(nutrient)) said.push({ code: 'nutrients.move-ph-first' });
  if (compared.series === 'revised') {
    const old = amountOf(compareUsable(nutrient, today, planned, medium, 'classic'));
    if (side(old) !== side(amount))
      said.push({
        code: side(old) === 0 ? 'nutrients.old-chart-same' : `nutrients.old-chart-${old as Exclude<Amount, 'same'>}`,
        parameters,
      });
  }
  return said;
}

const side = (amount: Amount): -1 | 0 | 1 =>
  amount === 'same' ? 0 : amount === 'half' || amount === 'much-less' || amount === 'somewhat-less' ? -1 : 1;

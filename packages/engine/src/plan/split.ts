import type { KgPerM2 } from '../units/si.ts';

/** A total given in several dressings, with the months to wait between them. */
export interface Split {
  readonly doses: readonly number[];
  readonly monthsApart: readonly [number, number];
}

/** 1 lb per 100 sq ft in kg/m². */
const LB_PER_100_SQFT = 0.4882427636 / 10;
const LB_PER_1000_SQFT = LB_PER_100_SQFT / 10;
const SHORT_TON_PER_ACRE = 0.2241702312;

/**
 * Published rules for giving lime in steps. Amounts are kg CaCO3 equivalent per m², except `surface field`, which is
 * kg of the limestone the rate was printed for.
 */
export const LIME_RULES = {
  /** Dug-in garden beds: whole up to 10 lb/100 sq ft, halves up to 20, thirds above; silent between 10–11 and 20–21, read as breaks. */
  'garden, dug in': { sources: ['PSUGARD', 'PSU_AASL'], basis: 'read' },
  /** At most 50 lb/1000 sq ft at a time, the rest later. */
  'garden, capped': { sources: ['NCSU-M', 'NCSU_LEE'], basis: 'read' },
  /** Established lawn: at most 100 lb/1000 sq ft at a time. */
  lawn: { sources: ['PSULAWN', 'PSU_LAWN'], basis: 'read' },
  /** Closely mown greens: at most 25 lb/1000 sq ft at a time. */
  greens: { sources: ['PSUTURF', 'PSU_TURF'], basis: 'read' },
  /** Field not worked in: at most 2 short tons per acre, then two to three years. */
  'surface field': { sources: ['MOLIME'], basis: 'read' },
} as const;

export type LimeRule = keyof typeof LIME_RULES;

/**
 * Splits a lime total by a published rule.
 *
 * @param rule which publication's rule
 * @param total kg CaCO3/m² (>= 0)
 * @returns doses that sum to `total`, empty for 0
 * @throws RangeError for a negative or non-finite total
 */
export function splitLime(rule: LimeRule, total: KgPerM2): Split {
  if (!(total >= 0) || !Number.isFinite(total)) throw new RangeError(`total must be 0 or more kg/m², got ${total}`);
  switch (rule) {
    case 'garden, dug in': {
      const pounds = total / LB_PER_100_SQFT;
      return { doses: equalParts(total, pounds <= 10 + 1e-9 ? 1 : pounds <= 20 + 1e-9 ? 2 : 3), monthsApart: [6, 6] };
    }
    case 'garden, capped':
      return { doses: capThenRest(total, 50 * LB_PER_1000_SQFT), monthsApart: [6, 6] };
    case 'lawn':
      return { doses: capThenRest(total, 100 * LB_PER_1000_SQFT), monthsApart: [4, 6] };
    case 'greens':
      return { doses: capThenRest(total, 25 * LB_PER_1000_SQFT), monthsApart: [4, 6] };
    case 'surface field':
      return { doses: capThenRest(total, 2 * SHORT_TON_PER_ACRE), monthsApart: [24, 36] };
  }
}

/** Published rules for giving elemental sulfur in steps. Amounts are kg of pure sulfur per m². */
export const SULFUR_RULES = {
  /** At most 2 lb/100 sq ft at a time, three months apart. */
  'capped, general': { sources: ['ISU-Q'], basis: 'read' },
  /** Above 30 lb/1000 sq ft: two thirds first, retest after about three months, then the rest if still needed. */
  'two thirds first': { sources: ['UTK', 'UTBLUE'], basis: 'read' },
  /** Turf mown at 2 in or more: at most 5 lb/1000 sq ft at a time, 10 a year. */
  turf: { sources: ['PUTURF', 'NDSUIRON'], basis: 'read' },
  /** Surface dressing of established blueberry: at most 0.7 lb/100 sq ft a year. */
  'established blueberry': { sources: ['EXT'], basis: 'read' },
  /** Wild blueberry: at most 1000 lb/acre a year. */
  'wild blueberry': { sources: ['UME254'], basis: 'read' },
} as const;

export type SulfurRule = keyof typeof SULFUR_RULES;

/** Largest single dressing of a sulfur rule and the months to the next, kg S/m². */
export const SULFUR_CAPS: Readonly<
  Record<Exclude<SulfurRule, 'two thirds first'>, { cap: number; months: number; perYear?: number }>
> = {
  'capped, general': { cap: 2 * LB_PER_100_SQFT, months: 3 },
  turf: { cap: 5 * LB_PER_1000_SQFT, months: 3, perYear: 10 * LB_PER_1000_SQFT },
  'established blueberry': { cap: 0.7 * LB_PER_100_SQFT, months: 12, perYear: 0.7 * LB_PER_100_SQFT },
  'wild blueberry': { cap: 0.1120851156, months: 12, perYear: 0.1120851156 },
};

/**
 * Splits a sulfur total by a published rule.
 *
 * @param total kg S/m² (>= 0)
 * @throws RangeError for a negative or non-finite total
 */
export function splitSulfur(rule: SulfurRule, total: KgPerM2): Split {
  if (!(total >= 0) || !Number.isFinite(total)) throw new RangeError(`total must be 0 or more kg/m², got ${total}`);
  if (rule === 'two thirds first')
    return {
      doses: total > 30 * LB_PER_1000_SQFT ? [(2 * total) / 3, total / 3] : equalParts(total, 1),
      monthsApart: [3, 3],
    };
  const { cap, months } = SULFUR_CAPS[rule];
  return { doses: capThenRest(total, cap), monthsApart: [months, months] };
}

function equalParts(total: number, parts: number): number[] {
  return total === 0 ? [] : Array.from({ length: parts }, () => total / parts);
}

/** Full dressings of `cap` and a last one with what remains; none when nothing may be given at once. */
export function capThenRest(total: number, cap: number): number[] {
  if (!(cap > 0)) return [];
  const doses: number[] = [];
  let rest = total;
  while (rest > cap * (1 + 1e-9)) {
    doses.push(cap);
    rest -= cap;
  }
  if (rest > 1e-12) doses.push(rest);
  return doses;
}

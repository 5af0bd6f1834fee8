import { type LimeRule, type Split, SULFUR_CAPS, type SulfurRule, splitLime, splitSulfur } from '@sorrel/engine/plan';
import { parseQuantity } from '@sorrel/engine/units';
import type { Adapter, CheckCase } from '../adapter.ts';

/** How the case files write a rate in a key, and the unit it is. */
const units: readonly (readonly [RegExp, string])[] = [
  [/lb_(?:per_)?100_?(?:sq_?ft|ft2)/, 'lb/100 sq ft'],
  [/lb_(?:per_)?1000_?(?:sq_?ft|ft2)/, 'lb/1000 sq ft'],
  [/^tons$/, 'short ton/acre'],
];

function kgPerM2(unit: string): number {
  const one = parseQuantity(`1 ${unit}`, 'massPerArea');
  if (!one.ok) throw new Error(one.problems[0]?.message);
  return one.value;
}

/** The total of a case and the unit it is written in. */
function totalOf({ inputs }: CheckCase): { readonly amount: number; readonly unit: string } | undefined {
  for (const [key, value] of Object.entries(inputs))
    for (const [pattern, unit] of units)
      if (pattern.test(key) && typeof value === 'number') return { amount: value, unit };
  return undefined;
}

const has = (check: CheckCase, ...keys: string[]) => keys.some((key) => key in check.expected);

function limeRuleOf(check: CheckCase): LimeRule | undefined {
  const { rule, situation, incorporated } = check.inputs;
  const total = totalOf(check);
  if (total === undefined || Object.keys(check.inputs).some((key) => /(^|_)S_|need/.test(key))) return undefined;
  if (rule === 'psu_home_garden' || situation === 'garden') return 'garden, dug in';
  if (rule === 'nc_cap') return 'garden, capped';
  if (rule !== undefined) return undefined;
  if (situation === 'lawn') return 'lawn';
  if (total.unit === 'short ton/acre') return incorporated === false ? 'surface field' : undefined;
  if (situation !== undefined) return undefined;
  if (has(check, 'n_applications')) return 'garden, dug in';
  return has(check, 'doses') ? 'garden, capped' : undefined;
}

const months = ([from, to]: Split['monthsApart']) => (from === to ? from : `${from}-${to}`);

function limeFigures(check: CheckCase, rule: LimeRule): Record<string, unknown> {
  const total = totalOf(check);
  if (total === undefined) throw new Error('no total');
  const one = kgPerM2(total.unit);
  const { doses, monthsApart } = splitLime(rule, total.amount * one);
  const written = doses.map((dose) => dose / one);
  return {
    doses: written,
    each: written[0],
    max_each: written[0],
    first_application_tons: written[0],
    applications: doses.length,
    n_applications: doses.length,
    min_applications: doses.length,
    months_apart: months(monthsApart),
    interval_months: months(monthsApart),
    gap_months: months(monthsApart),
    wait_years: months([monthsApart[0] / 12, monthsApart[1] / 12]),
  };
}

function sulfurRuleOf(check: CheckCase): SulfurRule | undefined {
  if (has(check, 'first_lb') && 'need_lb_per_1000_sqft' in check.inputs) return 'two thirds first';
  if (has(check, 'min_months_apart') && 'S_lb_per_100_sqft' in check.inputs) return 'capped, general';
  return undefined;
}

/** Lime and sulfur given in steps (`plan/split.ts`). */
export const plan: readonly Adapter[] = [
  {
    name: 'lime in steps',
    accepts: (check) =>
      has(check, 'doses', 'applications', 'n_applications', 'min_applications', 'first_application_tons') &&
      limeRuleOf(check) !== undefined,
    compute: (check) => limeFigures(check, limeRuleOf(check) as LimeRule),
  },
  {
    name: 'sulfur in steps',
    accepts: (check) => sulfurRuleOf(check) !== undefined,
    compute(check) {
      const total = totalOf(check);
      if (total === undefined) throw new Error('no total');
      const one = kgPerM2(total.unit);
      const { doses, monthsApart } = splitSulfur(sulfurRuleOf(check) as SulfurRule, total.amount * one);
      return {
        applications: doses.length,
        min_months_apart: monthsApart[0],
        retest_months: monthsApart[0],
        first_lb: (doses[0] ?? 0) / one,
        then_lb: (doses[1] ?? 0) / one,
      };
    },
  },
  {
    name: 'yearly cap of sulfur on established blueberry',
    accepts: (check) => has(check, 'S_lb_per_100_sqft_per_year') && Object.keys(check.inputs).length === 0,
    compute: () => ({
      S_lb_per_100_sqft_per_year:
        (SULFUR_CAPS['established blueberry'].perYear ?? Number.NaN) / kgPerM2('lb/100 sq ft'),
    }),
  },
  {
    name: 'cap of sulfur on turf',
    accepts: (check) =>
      has(check, 'max_lb_per_1000sqft_each') && String(check.inputs.situation ?? '').startsWith('turf mown >= 2 in'),
    compute: () => ({
      max_lb_per_1000sqft_each: SULFUR_CAPS.turf.cap / kgPerM2('lb/1000 sq ft'),
      max_per_year: (SULFUR_CAPS.turf.perYear ?? Number.NaN) / kgPerM2('lb/1000 sq ft'),
    }),
  },
];

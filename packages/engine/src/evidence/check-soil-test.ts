import type { Problem } from '../derivation/problem.ts';
import { dayNumber, isIsoDate } from '../units/calendar.ts';
import type { IsoDate } from '../units/si.ts';
import { checkBuffer } from './buffer-check.ts';
import type { SoilTest } from './soil-test.ts';
import { limitsOf } from './test-limits.ts';
import { addsUp } from './texture-sum.ts';

/** Soil pH outside these cannot be real soil: hard limits of the entry. ISO 10390 covers 2 to 12; gardens stop at 11. */
export const PH_LIMITS = { low: 2, high: 11 } as const;

const round = (value: number): number => Math.round(value * 1000) / 1000;

/** "45" was meant as 4.5, "65" as 6.5, "650" as 6.5. */
function meant(value: number): number | undefined {
  for (const by of [10, 100]) if (value / by >= 3 && value / by <= 9.5) return round(value / by);
  return undefined;
}

/**
 * Whether one soil test can be real. Every fault names place, field, value and what to enter instead.
 *
 * @param test in SI, as converted from the entry
 * @param place name of the place, or anything that has one
 * @param at path of the test in the entry, e.g. `tests[0]`
 * @param today when given, a date after it is a fault
 * @returns every fault found; an empty list when the test is plausible
 */
export function checkSoilTest(
  test: SoilTest,
  place: string | { readonly name: string },
  at = 'test',
  today?: IsoDate,
): Problem[] {
  const name = typeof place === 'string' ? place : place.name;
  const problems: Problem[] = [];
  const report = (code: string, field: string, value: unknown, message: string, fix: string): void => {
    problems.push({ code: `evidence.${code}`, place: name, field: `${at}.${field}`, value, message, fix });
  };
  if (!isIsoDate(test.date))
    report(
      'date',
      'date',
      test.date,
      `${test.date} is not a date.`,
      'Write it as year-month-day, for example 2026-04-15.',
    );
  else if (today !== undefined && dayNumber(test.date) > dayNumber(today))
    report('test-in-future', 'date', test.date, `A test cannot be dated ${test.date}, after today.`, 'Check the year.');
  const ph = test.ph?.value;
  if (ph !== undefined && !(ph >= PH_LIMITS.low && ph <= PH_LIMITS.high)) {
    const guess = meant(ph);
    const fix = guess === undefined ? 'Enter a pH between 3 and 10.' : `Did you mean ${guess}?`;
    report('ph-impossible', 'ph.value', ph, `Soil with pH ${ph} does not exist: soil lies between 2 and 11.`, fix);
  }
  const buffer = test.buffer;
  if (buffer !== undefined) {
    if (buffer.method === undefined)
      report(
        'buffer-kind',
        'buffer.method',
        undefined,
        'A buffer pH means nothing without the name of the buffer.',
        'Look on the report for SMP, Sikora, Mehlich, Adams-Evans, Moore-Sikora or Woodruff.',
      );
    else {
      const problem = checkBuffer(buffer.value, buffer.method, `${at}.buffer.value`, name);
      if (problem) problems.push(problem);
    }
  }
  for (const { field, value, low, high, what, fix } of limitsOf(test))
    if (value !== undefined && !(value >= low && value <= high))
      report('out-of-range', field, value, `${what} is ${value}; it must lie between ${low} and ${high}.`, fix);
  if (test.sand !== undefined && test.silt !== undefined && test.clay !== undefined) {
    const sum = test.sand + test.silt + test.clay;
    if (!addsUp(sum))
      report(
        'texture-sum',
        'sand',
        sum,
        `Sand, silt and clay add up to ${round(sum * 100)} %, not 100 %.`,
        'Check the three figures against the report.',
      );
  } else if ((test.sand ?? 0) + (test.silt ?? 0) + (test.clay ?? 0) > 1.01)
    report(
      'texture-sum',
      'sand',
      (test.sand ?? 0) + (test.silt ?? 0) + (test.clay ?? 0),
      'The sizes given add up to more than 100 %.',
      'Check the figures against the report.',
    );
  if (test.organicMatter !== undefined && test.organicCarbon !== undefined && test.organicCarbon > test.organicMatter)
    report(
      'carbon-above-matter',
      'organicCarbon',
      test.organicCarbon,
      'Organic carbon cannot be more than organic matter.',
      'Carbon is about half of organic matter: check whether the two were swapped.',
    );
  if (test.cecBasis !== undefined && test.cec === undefined)
    report(
      'cec-missing',
      'cec',
      undefined,
      'The kind of CEC is given but not the figure.',
      'Enter the CEC, or leave out its kind.',
    );
  if (test.baseSaturation !== undefined && test.cec === undefined)
    report(
      'cec-missing',
      'cec',
      undefined,
      'Base saturation needs the CEC it is a share of.',
      'Enter the CEC, or leave out the base saturation.',
    );
  return problems;
}

import type { Problem } from '../derivation/problem.ts';
import { checkForecast } from '../forecast/check.ts';
import { isIsoDate } from '../units/calendar.ts';
import type { BedRecord, LearnOptions } from './types.ts';

/** What is wrong with a record, each with field, value and what to enter instead; empty when all is well. */
export function checkRecord(record: BedRecord, options: LearnOptions): Problem[] {
  const found: Problem[] = [];
  const date = (field: string, value: string) => {
    if (!isIsoDate(value))
      found.push({
        code: 'learning.date',
        field,
        value,
        message: 'This is not a date.',
        fix: 'Write the date as year-month-day, like 2026-03-15.',
      });
  };
  date('today', options.today);
  for (const [i, test] of record.tests.entries()) {
    date(`tests[${i}].date`, test.date);
    const ph = test.ph?.value;
    if (ph !== undefined && !(ph >= 2 && ph <= 11))
      found.push({
        code: 'learning.ph',
        field: `tests[${i}].ph.value`,
        value: ph,
        message: 'A soil pH lies between 2 and 11.',
        fix: 'Enter the pH from the report.',
      });
  }
  if (found.length > 0) return found;
  const before = options.before ?? { mean: 6, sd: 1 };
  return checkForecast({
    start: options.today,
    layer: record.layer,
    curve: record.curve,
    present: before,
    medium: record.medium,
    applications: record.applications,
    ...(record.weather === undefined ? {} : { weather: record.weather }),
  }).map((problem) => ({ ...problem, field: problem.field.replace('present.', 'before.') }));
}

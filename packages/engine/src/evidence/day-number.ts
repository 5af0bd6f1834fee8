import type { IsoDate } from '../units/si.ts';

const digits = (date: string, from: number, to: number): number => {
  let value = 0;
  for (let index = from; index < to; index++) value = value * 10 + date.charCodeAt(index) - 48;
  return value;
};

/**
 * Days from 1970-01-01 to a calendar date, without a clock, a time zone or a new object.
 *
 * @param date ISO 8601 calendar date `YYYY-MM-DD`; nothing else is checked
 * @returns whole days, negative before 1970 (proleptic Gregorian calendar)
 */
export function dayNumber(date: IsoDate): number {
  const month = digits(date, 5, 7);
  // Counting years from March puts the leap day last, so no month table is needed.
  const year = digits(date, 0, 4) - (month <= 2 ? 1 : 0);
  const era = Math.floor(year / 400);
  const ofEra = year - era * 400;
  const ofYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + digits(date, 8, 10) - 1;
  return era * 146097 + ofEra * 365 + Math.floor(ofEra / 4) - Math.floor(ofEra / 100) + ofYear - 719468;
}

/** Month of an ISO date, 1 to 12. */
export const monthOf = (date: IsoDate): number => digits(date, 5, 7);

/** True for `YYYY-MM-DD` that names a day of the calendar. */
export function isDate(date: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(date)) return false;
  const month = monthOf(date);
  const day = digits(date, 8, 10);
  if (month < 1 || month > 12 || day < 1) return false;
  const next =
    month === 12 ? `${date.slice(0, 4)}-12-32` : `${date.slice(0, 5)}${String(month + 1).padStart(2, '0')}-01`;
  return dayNumber(date) < dayNumber(next);
}

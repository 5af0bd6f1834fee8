import type { IsoDate } from '../units/si.ts';

const DAY = 86_400_000;
export const YEAR_DAYS = 365.2425;

/** Milliseconds of midnight UTC of a calendar date; RangeError when it is none. */
function midnight(date: IsoDate): number {
  const time = Date.parse(`${date}T00:00:00Z`);
  if (!/^\d{4}-\d{2}-\d{2}$/.test(date) || Number.isNaN(time)) throw new RangeError(`not a calendar date: ${date}`);
  return time;
}

/** The date a number of days later; parts of a day are dropped. */
export function addDays(date: IsoDate, days: number): IsoDate {
  return new Date(midnight(date) + Math.floor(days) * DAY).toISOString().slice(0, 10);
}

/** Days from one date to another, negative when the second is earlier. */
export function daysBetween(from: IsoDate, to: IsoDate): number {
  return (midnight(to) - midnight(from)) / DAY;
}

/** Days since 1 January of the date's year, 0 to 365. */
export function dayOfYear(date: IsoDate): number {
  return daysBetween(`${date.slice(0, 4)}-01-01`, date);
}

import { UTCDateMini } from '@date-fns/utc/date/mini';
import { addMonths as addMonthsToDate } from 'date-fns/addMonths';
import type { IsoDate } from './si.ts';

const DAY = 86_400_000;
const shape = /^(\d{4})-(\d{2})-(\d{2})$/;
const daysKnown = new Map<string, number>();
const monthsKnown = new Map<number, Map<IsoDate, IsoDate>>();
const datesKnown = new Map<number, IsoDate>();
// Plans ask for the same few dates over and over; a workshop of gardens must not grow the store without end.
const mostKnown = 4096;

function remember<K, V>(store: Map<K, V>, key: K, value: V): V {
  if (store.size >= mostKnown) store.clear();
  store.set(key, value);
  return value;
}

const toDay = (date: IsoDate): number | undefined => {
  const known = daysKnown.get(date);
  if (known !== undefined) return known;
  const parts = shape.exec(date);
  if (parts === null) return undefined;
  const at = new UTCDateMini(Date.UTC(Number(parts[1]), Number(parts[2]) - 1, Number(parts[3])));
  // Date.UTC takes years below 100 as 19xx and rolls 30 February over: neither reads back as written.
  return at.toISOString().slice(0, 10) === date ? remember(daysKnown, date, at.getTime() / DAY) : undefined;
};

/** Whether a text is a day of the calendar written `YYYY-MM-DD`, from 0100 to 9999. */
export const isIsoDate = (text: string): text is IsoDate => toDay(text) !== undefined;

/**
 * Days from 1970-01-01 to a date; earlier dates are negative.
 *
 * @throws RangeError when the text is no date
 */
export function dayNumber(date: IsoDate): number {
  const day = toDay(date);
  if (day === undefined) throw new RangeError(`${date} is not a date of the form YYYY-MM-DD`);
  return day;
}

/** The date so many days after 1970-01-01. @throws RangeError when it is outside the years 0100 to 9999 */
export function dateOfDay(day: number): IsoDate {
  const known = datesKnown.get(day);
  if (known !== undefined) return known;
  const date = Number.isInteger(day) && Math.abs(day) < 3e6 ? new Date(day * DAY).toISOString().slice(0, 10) : '';
  if (!shape.test(date)) throw new RangeError(`Day ${day} is outside the calendar`);
  return remember(datesKnown, day, date);
}

/** The date so many days later, or earlier when negative. @throws RangeError for no date or a part of a day */
export const addDays = (date: IsoDate, days: number): IsoDate => dateOfDay(dayNumber(date) + days);

/**
 * The date so many whole months later, or earlier when negative; a day that the month lacks becomes its last day:
 * 31 January plus one month is 28 or 29 February.
 *
 * @throws RangeError when the text is no date or the months are not whole
 */
export function addMonths(date: IsoDate, months: number): IsoDate {
  const moved = monthsKnown.get(months);
  return moved?.get(date) ?? moveMonths(date, months, moved);
}

function moveMonths(date: IsoDate, months: number, moved: Map<IsoDate, IsoDate> | undefined): IsoDate {
  if (!Number.isInteger(months)) throw new RangeError(`${months} is not a whole number of months`);
  const at = addMonthsToDate(new UTCDateMini(dayNumber(date) * DAY), months);
  const store = moved ?? remember(monthsKnown, months, new Map<IsoDate, IsoDate>());
  return remember(store, date, dateOfDay(at.getTime() / DAY));
}

/** Month of a date, 1 to 12. @throws RangeError when the text is no date */
export function monthOf(date: IsoDate): number {
  dayNumber(date);
  return Number(date.slice(5, 7));
}

/** Year of a date. @throws RangeError when the text is no date */
export function yearOf(date: IsoDate): number {
  dayNumber(date);
  return Number(date.slice(0, 4));
}

/** Days from the first date to the second; negative when the second is earlier. @throws RangeError for no date */
export const daysBetween = (from: IsoDate, to: IsoDate): number => dayNumber(to) - dayNumber(from);

/** The earlier of two dates. */
export const earlierOf = (a: IsoDate, b: IsoDate): IsoDate => (dayNumber(a) <= dayNumber(b) ? a : b);

/** The later of two dates. */
export const laterOf = (a: IsoDate, b: IsoDate): IsoDate => (dayNumber(a) >= dayNumber(b) ? a : b);

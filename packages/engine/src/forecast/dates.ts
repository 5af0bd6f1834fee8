import { addDays as addWholeDays, daysBetween } from '../units/calendar.ts';
import type { IsoDate } from '../units/si.ts';

export { daysBetween };
export const YEAR_DAYS = 365.2425;

/** The date a number of days later; parts of a day are dropped. */
export const addDays = (date: IsoDate, days: number): IsoDate => addWholeDays(date, Math.floor(days));

/** Days since 1 January of the date's year, 0 to 365. */
export const dayOfYear = (date: IsoDate): number => daysBetween(`${date.slice(0, 4)}-01-01`, date);

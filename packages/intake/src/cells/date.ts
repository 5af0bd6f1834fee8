import { isIsoDate } from '@sorrel/engine/units';

/** In which order a sender writes the parts of a day; `spreadsheet-day` counts days from 1900. */
export const dateOrders = ['year-month-day', 'day-month-year', 'month-day-year', 'spreadsheet-day'] as const;
export type DateOrder = (typeof dateOrders)[number];

const MONTHS: readonly (readonly string[])[] = [
  ['jan', 'ene', 'janv', 'gen'],
  ['feb', 'fév', 'fev', 'févr'],
  ['mar', 'mär', 'mars', 'mrz'],
  ['apr', 'abr', 'avr'],
  ['may', 'mai', 'mayo', 'mag'],
  ['jun', 'juin', 'giu'],
  ['jul', 'juil', 'lug'],
  ['aug', 'ago', 'août', 'aout'],
  ['sep', 'sept', 'set'],
  ['oct', 'okt', 'ott'],
  ['nov'],
  ['dec', 'dez', 'dic', 'déc'],
];

/** Month of a name or its beginning, 1 to 12. */
function monthOf(name: string): number | undefined {
  const small = name.toLowerCase().replace('.', '');
  if (small.length < 3) return undefined;
  const at = MONTHS.findIndex((known) =>
    known.some((start) => small === start || (start.length === 3 && small.startsWith(start))),
  );
  return at < 0 ? undefined : at + 1;
}

const TIME = /[T\s,]+\d{1,2}[:.]\d{2}.*$/;
const NUMBERS = /^(\d{1,4})[/.\-\s](\d{1,2})[/.\-\s](\d{1,4})\.?$/;
const DAY_NAMED =
  /^(?:[a-z]{2,9}\.?,?\s+)?(\d{1,2})(?:st|nd|rd|th|\.)?[\s\-/]*([a-zéûä]{3,9})\.?[\s\-/,]*(\d{4}|\d{2})$/i;
const MONTH_NAMED = /^([a-zéûä]{3,9})\.?[\s\-/]*(\d{1,2})(?:st|nd|rd|th)?[\s\-/,]+(\d{4}|\d{2})$/i;
/** Days from the day before 1 January 1900 to 1 January 1970, in the count of spreadsheets, which holds a 29 February 1900. */
const TO_1970 = 25569;

const iso = (year: number, month: number, day: number): string | undefined => {
  const text = `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
  return isIsoDate(text) ? text : undefined;
};
/** Two digits mean this century: soil tests on file are not older. */
const fullYear = (text: string): number => (text.length <= 2 ? 2000 + Number(text) : Number(text));

const withoutTime = (cell: string): string => cell.replace(TIME, '').trim();

/**
 * Reads a day.
 *
 * @param cell without blanks at its ends
 * @param order the order of the parts, for days written in figures with the year last
 * @returns the day as year-month-day; `order` when it can only be told with an order; `undefined` when it is no day
 */
export function readDate(cell: string, order: DateOrder | undefined): string | 'order' | undefined {
  const text = withoutTime(cell);
  const compact = /^(20\d{2}|19\d{2})(\d{2})(\d{2})$/.exec(text);
  if (compact !== null) return iso(Number(compact[1]), Number(compact[2]), Number(compact[3]));
  if (/^\d{4,5}(?:[.,]\d+)?$/.test(cell))
    return order === 'spreadsheet-day'
      ? spreadsheetDay(Math.floor(Number(cell.replace(',', '.'))))
      : order === undefined
        ? 'order'
        : undefined;
  const numbers = NUMBERS.exec(text);
  if (numbers !== null) {
    const [, a = '', b = '', c = ''] = numbers;
    if (a.length > 2) return c.length <= 2 && a.length === 4 ? iso(Number(a), Number(b), Number(c)) : undefined;
    if (c.length === 3) return undefined;
    if (order === 'year-month-day') return c.length <= 2 ? iso(fullYear(a), Number(b), Number(c)) : undefined;
    if (order === 'month-day-year') return iso(fullYear(c), Number(a), Number(b));
    if (order === 'day-month-year') return iso(fullYear(c), Number(b), Number(a));
    return order === undefined ? 'order' : undefined;
  }
  const named = DAY_NAMED.exec(text);
  if (named !== null) {
    const month = monthOf(named[2] ?? '');
    return month === undefined ? undefined : iso(fullYear(named[3] ?? ''), month, Number(named[1]));
  }
  const american = MONTH_NAMED.exec(text);
  if (american === null) return undefined;
  const month = monthOf(american[1] ?? '');
  return month === undefined ? undefined : iso(fullYear(american[3] ?? ''), month, Number(american[2]));
}

/** A day of the count that spreadsheets keep, 1 January 1990 to 31 December 2099. */
function spreadsheetDay(days: number): string | undefined {
  if (days < 32874 || days > 73050) return undefined;
  return new Date((days - TO_1970) * 86_400_000).toISOString().slice(0, 10);
}

export interface DateEvidence {
  /** Orders in which every cell is a day. */
  readonly possible: readonly DateOrder[];
  /** Whether any cell needs an order at all. */
  readonly needed: boolean;
}

/** Which orders fit the days of a column. */
export function dateEvidence(cells: readonly string[]): DateEvidence {
  const unsure = cells.filter((cell) => readDate(cell, undefined) === 'order');
  return {
    possible: dateOrders.filter((order) => unsure.every((cell) => readDate(cell, order) !== undefined)),
    needed: unsure.length > 0,
  };
}

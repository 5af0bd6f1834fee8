import { type WebCode, web } from '@sorrel/almanac/words/en/web';

export type { WebCode };

type Parameters = Readonly<Record<string, string | number>>;
/** Stem of a label with one form for each plural category of the language: `web.places` for `web.places-one`. */
export type CountedCode = WebCode extends infer C ? (C extends `${infer Stem}-other` ? Stem : never) : never;

/** Languages there are words in; more come with a catalogue of their own. */
export const languages = ['en'] as const;
export const language: (typeof languages)[number] = 'en';
/** The reader's own English writes dates its own way. */
const locale = (globalThis.navigator?.languages ?? []).find((each) => each.startsWith(language)) ?? 'en-GB';
const rules = new Intl.PluralRules(language);
const number = new Intl.NumberFormat(locale, { maximumFractionDigits: 2 });

/**
 * A label of the screen in the reader's language, with `{name}` filled in.
 *
 * @throws RangeError when a parameter is missing: a mistake in the program
 */
export function label(code: WebCode, parameters: Parameters = {}): string {
  return web[code].replace(/\{(\w+)\}/g, (_, name: string) => {
    const value = parameters[name];
    if (value === undefined) throw new RangeError(`The label ${code} needs ${name}.`);
    return typeof value === 'number' ? number.format(value) : value;
  });
}

/** Whether there is such a label, for words that come from data. */
export const hasLabel = (code: string): code is WebCode => code in web;

/** A label that counts: `counted('web.places', 3)`. The number itself is the parameter `count`. */
export function counted(stem: CountedCode, count: number, parameters: Parameters = {}): string {
  const form = `${stem}-${rules.select(count)}`;
  const code = (form in web ? form : `${stem}-other`) as WebCode;
  return label(code, { ...parameters, count });
}

const utc = (iso: string): Date => new Date(`${iso.slice(0, 10)}T00:00:00Z`);
const dayFormat = new Intl.DateTimeFormat(locale, {
  day: 'numeric',
  month: 'short',
  year: 'numeric',
  timeZone: 'UTC',
});
const monthFormat = new Intl.DateTimeFormat(locale, { month: 'short', year: 'numeric', timeZone: 'UTC' });

/** `3 Oct 2026` */
export const day = (iso: string): string => dayFormat.format(utc(iso));
/** `Oct 2026` */
export const month = (iso: string): string => monthFormat.format(utc(iso));
/** `3 Oct – 10 Nov 2026`, as short as the language writes it. */
export const days = (from: string, to: string): string => dayFormat.formatRange(utc(from), utc(to));

const monthNames = new Intl.DateTimeFormat(locale, { month: 'short', timeZone: 'UTC' });
/** `Jan` for 0. */
export const monthName = (index: number): string => monthNames.format(new Date(Date.UTC(2026, index, 1)));

const shortFormat = new Intl.DateTimeFormat(locale, { month: 'short', year: '2-digit', timeZone: 'UTC' });
/** `Oct 26`, for axes. */
export const monthShort = (iso: string): string => shortFormat.format(utc(iso));
/** Names as a list: `tomato, carrot and cabbage`. */
export const listed = (names: readonly string[]): string =>
  new Intl.ListFormat(locale, { type: 'conjunction' }).format(names);
/** A chance without false precision: `under 1%`, `4%`. */
export const chance = (share: number): string =>
  share > 0 && share < 0.01
    ? label('web.chance-under')
    : share < 1 && share > 0.99
      ? label('web.chance-over')
      : percentFormat.format(share);
const percentFormat = new Intl.NumberFormat(locale, { style: 'percent', maximumFractionDigits: 0 });

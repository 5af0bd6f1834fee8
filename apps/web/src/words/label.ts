import { type WebCode, web } from '@sorrel/almanac/words/en/web';

export type { WebCode };

type Parameters = Readonly<Record<string, string | number>>;
/** Stem of a label with one form for each plural category of the language: `web.places` for `web.places-one`. */
export type CountedCode = WebCode extends infer C ? (C extends `${infer Stem}-other` ? Stem : never) : never;

const language = 'en';
const rules = new Intl.PluralRules(language);
const number = new Intl.NumberFormat(language, { maximumFractionDigits: 2 });

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

/** A label that counts: `counted('web.places', 3)`. The number itself is the parameter `count`. */
export function counted(stem: CountedCode, count: number, parameters: Parameters = {}): string {
  const form = `${stem}-${rules.select(count)}`;
  const code = (form in web ? form : `${stem}-other`) as WebCode;
  return label(code, { ...parameters, count });
}

const dayFormat = new Intl.DateTimeFormat(language, {
  day: 'numeric',
  month: 'short',
  year: 'numeric',
  timeZone: 'UTC',
});
const monthFormat = new Intl.DateTimeFormat(language, { month: 'short', year: 'numeric', timeZone: 'UTC' });

/** `3 Oct 2026` */
export const day = (iso: string): string => dayFormat.format(new Date(`${iso.slice(0, 10)}T00:00:00Z`));
/** `Oct 2026` */
export const month = (iso: string): string => monthFormat.format(new Date(`${iso.slice(0, 10)}T00:00:00Z`));
/** `3 Oct – 10 Nov 2026`, as short as the language writes it. */
export const days = (from: string, to: string): string =>
  dayFormat.formatRange(new Date(`${from}T00:00:00Z`), new Date(`${to}T00:00:00Z`));

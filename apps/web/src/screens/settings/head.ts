import { readGarden } from '@sorrel/engine/document';
import { fromSi, toSi, type UnitSystem, unitOf } from '@sorrel/engine/units';
import type { Content } from '../../data/write.ts';
import { label, type WebCode } from '../../words/label.ts';
import { numberOf } from '../test/draft.ts';

export type Head = Content<'garden'>;
export type MonthField = 'soilTemperature' | 'airTemperature' | 'rain';

/** Months as typed, in the reader's units; undefined when the garden has none of its own. */
export type Months = readonly string[];

export const monthUnit = (field: MonthField, units: UnitSystem): string =>
  field === 'rain' ? (units === 'us' ? 'in' : 'mm') : units === 'us' ? '°F' : '°C';

/** Stored months in the reader's units. Rain is stored as it was written, with its unit. */
export function monthsOf(head: Head, field: MonthField, units: UnitSystem): Months | undefined {
  const unit = unitOf(monthUnit(field, units));
  if (field === 'rain')
    return head.rain?.map((text) => {
      const [amount, own] = text.trim().split(/\s+/);
      return own === monthUnit(field, units)
        ? (amount ?? '')
        : rounded(fromSi(toSi(Number(amount), unitOf(own ?? 'mm')), unit));
    });
  return head[field]?.map((celsius) => rounded(fromSi(celsius, unit)));
}

/** Typed months as they are stored. */
export function storedMonths(months: Months, field: MonthField, units: UnitSystem): unknown[] {
  const unit = monthUnit(field, units);
  return months.map((text) => {
    if (field === 'rain') return `${text.trim()} ${unit}`;
    const value = numberOf(text);
    return typeof value === 'number' ? Math.round(toSi(value, unitOf(unit)) * 100) / 100 : text;
  });
}

const rounded = (value: number): string => String(Math.round(value * 10) / 10);

const labels: Readonly<Record<string, WebCode>> = {
  garden: 'web.set-name',
  region: 'web.set-region',
  climate: 'web.set-climate',
  money: 'web.set-money',
  latitude: 'web.set-latitude',
  soilTemperature: 'web.set-own-soil-text',
  airTemperature: 'web.set-own-air-text',
  rain: 'web.set-own-rain-text',
  overshootChance: 'web.set-risk',
  finenessSystem: 'web.set-fineness',
};

/** What is wrong with settings, by field, checked as the engine will read them. */
export function checkHead(head: Head, today: string): ReadonlyMap<string, string> {
  const { problems } = readGarden({ ...head, places: [{ name: 'x' }] }, { today });
  return new Map(
    problems.flatMap(({ field, message, fix }): [string, string][] => {
      const key = /^\w+/.exec(field)?.[0] ?? '';
      const code = labels[key];
      return code === undefined ? [] : [[key, `${message} ${fix}`.replaceAll(field, label(code))]];
    }),
  );
}

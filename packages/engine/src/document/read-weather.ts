import { climates, type TypicalClimate } from '@sorrel/almanac/climates';
import type { Weather } from '../forecast/types.ts';
import type { Report } from './fields.ts';
import { limits } from './limits.ts';
import { measure } from './measure.ts';
import { problem, sentence } from './report.ts';

export interface WeatherEntry {
  readonly soilTemperature?: readonly number[];
  readonly airTemperature?: readonly number[];
  readonly rain?: readonly string[];
  readonly latitude?: number;
}

/** Climate taken when nobody says (as the forecast does). */
const USUAL = 'maritime';

/** Twelve months as the other half of the world has them. */
export const turned = <T>(months: readonly T[]): readonly T[] => [...months.slice(6), ...months.slice(0, 6)];

/**
 * Weather for the forecast: the person's own figures over those of the typical climate, whose year is turned by six
 * months when the garden lies in the other half of the world.
 */
export function readWeather(
  entry: WeatherEntry,
  climate: TypicalClimate | undefined,
  hemisphere: 'north' | 'south',
  report: Report,
  skipped: string[],
): Weather | undefined {
  const rain = rainOf(entry.rain, report, skipped);
  let latitude = entry.latitude;
  if (latitude !== undefined && latitude !== 0 && latitude > 0 !== (hemisphere === 'north')) {
    report.problems.push(problem('document.latitude-side', { field: 'latitude' }, latitude, { half: hemisphere }));
    skipped.push(sentence('document.field-left-out', { field: 'latitude' }));
    latitude = undefined;
  }
  const typical = climate ?? climates.find(({ name }) => name === USUAL);
  const other =
    typical !== undefined && typical.hemisphere !== hemisphere
      ? { air: turned(typical.air), rain: turned(typical.rain), latitude: -typical.latitude }
      : {};
  const weather: Weather = {
    ...(climate === undefined ? {} : { climate: climate.name }),
    ...other,
    ...(entry.airTemperature === undefined ? {} : { air: entry.airTemperature }),
    ...(entry.soilTemperature === undefined ? {} : { soil: entry.soilTemperature }),
    ...(rain === undefined ? {} : { rain }),
    ...(latitude === undefined ? {} : { latitude }),
  };
  return Object.keys(weather).length === 0 ? undefined : weather;
}

/** Twelve months of rain, m; one wrong month makes all of them useless. */
function rainOf(months: readonly string[] | undefined, report: Report, skipped: string[]): number[] | undefined {
  if (months === undefined) return undefined;
  const rain = months.flatMap((text, index) => measure(text, 'waterDepth', limits.rain, ['rain', index], report) ?? []);
  if (rain.length === 12) return rain;
  skipped.push(sentence('document.field-left-out', { field: 'rain' }));
  return undefined;
}

import { climates } from '@sorrel/almanac/climates';
import type { Celsius, Fraction, Metre } from '../units/si.ts';
import { waterYear } from './moisture.ts';
import { P } from './parameters.ts';
import { temperatureOn } from './temperature.ts';
import type { ForecastInput } from './types.ts';

/** The place's weather by day of the year. */
export interface PlaceWeather {
  temperature(day: number): Celsius;
  /** Relative to field capacity. */
  moisture(day: number): Fraction;
  /** m a day. */
  drainage(day: number): Metre;
  /** m a day. */
  irrigation(day: number): Metre;
}

/** A pot is watered before it wilts: it never counts as drier than this (common practice, no source). */
const POT_MOISTURE = 0.7;
/** Water a pot or box holds for its plants, m (judgement). */
const POT_STORE = 0.03;

/** Puts the person's own figures over those of a typical climate; RangeError for a climate the almanac does not hold. */
export function placeWeather(input: Pick<ForecastInput, 'weather' | 'layer' | 'medium' | 'container'>): PlaceWeather {
  const weather = input.weather ?? {};
  const name = weather.climate ?? 'maritime';
  const climate = climates.find((row) => row.name === name);
  if (climate === undefined) throw new RangeError(`no climate ${name}`);
  const air = weather.air ?? climate.air;
  const container = input.container ?? false;
  const temperature =
    weather.soil !== undefined && !container
      ? temperatureOn({ monthly: weather.soil, kind: 'soil', depth: 0 })
      : temperatureOn({
          monthly: air,
          kind: container ? 'container' : 'air',
          depth: input.layer.depth / 2,
          medium: input.medium === 'soilless' || input.medium === 'organic' ? 'peat' : 'mineral',
          ...(weather.mulch ? { surface: 0.7 } : {}),
        });
  const { steady } = weather;
  if (steady !== undefined)
    return {
      temperature: steady.temperature === undefined ? temperature : () => steady.temperature ?? 0,
      moisture: () => steady.moisture,
      drainage: () => steady.drainage / 365,
      irrigation: () => (weather.irrigation ?? 0) / 365,
    };
  const water = waterYear({
    rain: weather.rain ?? climate.rain,
    air,
    latitude: weather.latitude ?? climate.latitude,
    ...(weather.irrigation === undefined ? {} : { irrigation: weather.irrigation }),
    store: container ? POT_STORE : P.waterStore,
  });
  const at = (list: readonly number[], day: number) => list[Math.floor(day) % 365] ?? 0;
  return {
    temperature,
    moisture: (day) => Math.max(container ? POT_MOISTURE : 0, at(water.moisture, day)),
    drainage: (day) => at(water.drainage, day),
    irrigation: (day) => at(water.irrigation, day),
  };
}

import type { Celsius, Metre } from '../units/si.ts';
import { YEAR_DAYS } from './dates.ts';
import { P } from './parameters.ts';
import { monthlyAt } from './temperature.ts';

/** Hours of daylight on a day of the year (0 to 24), from the sun's declination. Latitude in degrees, south negative. */
export function dayLength(latitude: number, day: number): number {
  const declination = 0.409 * Math.sin((2 * Math.PI * day) / YEAR_DAYS - 1.39);
  const cosine = -Math.tan((latitude * Math.PI) / 180) * Math.tan(declination);
  return (24 / Math.PI) * Math.acos(Math.min(1, Math.max(-1, cosine)));
}

/**
 * Water that plants and sun would take in a month by Thornthwaite's formula, from air temperature and daylight:
 * `16 mm · (10 T/I)^a · N/12`, `I = Σ (T/5)^1.514`. Twelve values, m. Source: TEXT, from memory; a proxy, within a third.
 */
export function potentialEvaporation(air: readonly Celsius[], latitude: number): Metre[] {
  const index = air.reduce((sum, t) => sum + Math.max(0, t / 5) ** 1.514, 0);
  const a = 6.75e-7 * index ** 3 - 7.71e-5 * index ** 2 + 1.792e-2 * index + 0.49239;
  return air.map((t, month) => {
    const light = dayLength(latitude, ((month + 0.5) / 12) * YEAR_DAYS) / 12;
    return t <= 0 || index === 0 ? 0 : 0.016 * ((10 * t) / index) ** a * light;
  });
}

export interface MoistureInput {
  /** Monthly rain, January first, m. */
  readonly rain: readonly Metre[];
  /** Monthly mean air temperature, °C. */
  readonly air: readonly Celsius[];
  readonly latitude: number;
  /** Water given in a year, m; given in the months that lack it most. */
  readonly irrigation?: Metre;
  /** Water the layer and the roots below it hold between wilting and field capacity, m. */
  readonly store?: Metre;
}

export interface WaterYear {
  /** Moisture relative to field capacity, by day of the year, 0 to 1. */
  readonly moisture: readonly number[];
  /** Water that drains through, m, by day. */
  readonly drainage: readonly Metre[];
  /** Water given, m, by day. */
  readonly irrigation: readonly Metre[];
}

/**
 * One bucket, a day at a time: rain and irrigation fill it, evaporation empties it in proportion to how full it is,
 * what does not fit drains. Run twice round the year so that the start does not matter. Water is conserved.
 * Moisture is `w0 + (1 − w0)·S/Smax`, so that it lies between wilting and field capacity.
 */
export function waterYear(input: MoistureInput): WaterYear {
  const store = input.store ?? P.waterStore;
  const evaporation = potentialEvaporation(input.air, input.latitude);
  const lack = evaporation.map((value, month) => Math.max(0, value - (input.rain[month] ?? 0)));
  const lackSum = lack.reduce((sum, value) => sum + value, 0);
  const warm = input.air.map((t) => Math.max(0, t));
  const warmSum = warm.reduce((sum, value) => sum + value, 0);
  const given = (month: number): number =>
    lackSum > 0 ? (lack[month] ?? 0) / lackSum : warmSum > 0 ? (warm[month] ?? 0) / warmSum : 1 / 12;
  const irrigationByMonth = input.rain.map((_, month) => (input.irrigation ?? 0) * given(month));
  const days = 365;
  const perDay = 12 / days;
  const moisture: number[] = new Array(days).fill(0);
  const drainage: number[] = new Array(days).fill(0);
  const irrigation: number[] = new Array(days).fill(0);
  let held = store;
  for (let day = 0; day < 2 * days; day++) {
    const at = day % days;
    const water = Math.max(0, monthlyAt(irrigationByMonth, at)) * perDay;
    held += Math.max(0, monthlyAt(input.rain, at)) * perDay + water;
    held -= Math.min(held, monthlyAt(evaporation, at) * perDay * Math.min(1, held / store));
    const excess = Math.max(0, held - store);
    held -= excess;
    moisture[at] = P.wilting + (1 - P.wilting) * (held / store);
    drainage[at] = excess;
    irrigation[at] = water;
  }
  return { moisture, drainage, irrigation };
}

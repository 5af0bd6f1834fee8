import { climates } from '@sorrel/almanac/climates';
import { finenessSystems } from '@sorrel/almanac/fineness-systems';
import type { Settings } from '../plan/place.ts';
import { nearest } from '../units/nearest.ts';
import type { IsoDate } from '../units/si.ts';
import type { Choices } from './choices.ts';
import type { Report } from './fields.ts';
import { readWeather, turned, type WeatherEntry } from './read-weather.ts';
import { problem, sentence } from './report.ts';

/** Chance of passing the safe end that a first application may carry when nobody says (SORREL). */
export const USUAL_OVERSHOOT_CHANCE = 0.05;
/** Fineness system taken when nobody says (SORREL). */
export const USUAL_FINENESS_SYSTEM = 'OH';

export interface SettingsEntry extends WeatherEntry {
  readonly asOf?: string;
  readonly region?: string;
  readonly hemisphere?: 'north' | 'south';
  readonly climate?: string;
  readonly overshootChance?: number;
  readonly finenessSystem?: string;
}

/** Settings of a garden; what it does not say is taken as usual, and said to be. */
export function readSettings(
  entry: SettingsEntry,
  today: IsoDate,
  report: Report,
  choices: Choices,
  skipped: string[],
): Settings {
  const climate = entry.climate === undefined ? undefined : climates.find((each) => each.name === entry.climate);
  if (entry.climate !== undefined && climate === undefined) {
    report.problems.push(
      problem('document.unknown-climate', { field: 'climate' }, entry.climate, {
        known: climates.map((each) => each.name).join(', '),
      }),
    );
    skipped.push(sentence('document.field-left-out', { field: 'climate' }));
  }
  const stated = entry.hemisphere ?? sideOf(entry.latitude) ?? climate?.hemisphere;
  if (stated === undefined) choices.add('hemisphere', 'document.choice-hemisphere');
  const hemisphere = stated ?? 'north';
  const typical = climate?.hemisphere === hemisphere ? climate.soil : climate?.soil && turned(climate.soil);
  const soilTemperature = entry.soilTemperature ?? typical;
  if (soilTemperature === undefined) choices.add('climate', 'document.choice-climate');
  if (climate === undefined && (entry.airTemperature === undefined || entry.rain === undefined))
    choices.add('climate', 'document.choice-weather');
  const weather = readWeather(entry, climate, hemisphere, report, skipped);
  return {
    today: entry.asOf ?? today,
    overshootChance: entry.overshootChance ?? USUAL_OVERSHOOT_CHANCE,
    hemisphere,
    finenessSystem: finenessOf(entry.finenessSystem, report, choices, skipped),
    ...(entry.region === undefined ? {} : { region: entry.region }),
    ...(soilTemperature === undefined ? {} : { soilTemperature }),
    ...(weather === undefined ? {} : { weather }),
  };
}

/** Half of the world a latitude lies in. */
const sideOf = (latitude: number | undefined): 'north' | 'south' | undefined =>
  latitude === undefined || latitude === 0 ? undefined : latitude > 0 ? 'north' : 'south';

function finenessOf(typed: string | undefined, report: Report, choices: Choices, skipped: string[]): string {
  if (typed !== undefined) {
    const known = [...new Set(finenessSystems.map((row) => row.system))];
    const found = known.find((system) => system.toLowerCase() === typed.toLowerCase());
    if (found !== undefined) return found;
    report.problems.push(
      problem('document.unknown-fineness', { field: 'finenessSystem' }, typed, {
        nearest: nearest(typed, known) ?? '',
        known: known.join(', '),
      }),
    );
    skipped.push(sentence('document.field-left-out', { field: 'finenessSystem' }));
  }
  choices.add('finenessSystem', 'document.choice-fineness', { system: USUAL_FINENESS_SYSTEM });
  return USUAL_FINENESS_SYSTEM;
}

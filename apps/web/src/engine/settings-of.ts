import type { Settings } from '@sorrel/engine/plan';
import type { GardenRecord } from '../data/garden-store.ts';

/** Settings for a forecast: with the climate the garden names, where the reader of the document left it out. */
export function forecastSettings(settings: Settings, { document }: GardenRecord): Settings {
  if (settings.weather !== undefined || document.climate === undefined) return settings;
  return { ...settings, weather: { climate: document.climate } };
}

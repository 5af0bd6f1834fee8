import { presentPh } from '@sorrel/engine/evidence';
import type { Place, Settings } from '@sorrel/engine/plan';

export interface TestPoint {
  readonly date: string;
  /** In water, made comparable with the others. */
  readonly mean: number;
  readonly sd: number;
}

/** Each test by itself, on one scale and with its own error, oldest first. */
export function testPoints(place: Place, settings: Settings): readonly TestPoint[] {
  return place.tests
    .flatMap((test) => {
      const { hemisphere } = settings;
      const alone = presentPh([test], test.date, { applications: [], hemisphere, media: place.medium === 'soilless' });
      return alone === undefined ? [] : [{ date: test.date, mean: alone.mean, sd: alone.sd }];
    })
    .sort((a, b) => a.date.localeCompare(b.date));
}

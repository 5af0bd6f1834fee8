import type { Place, PlantRange, Settings } from '../plan/place.ts';
import type { PlacingInput } from './input.ts';

/** Small places and plants for the tests of this room. */
export const settings: Settings = {
  today: '2026-11-01',
  overshootChance: 0.05,
  hemisphere: 'north',
  finenessSystem: 'OH',
};

export function bed(name: string, ph: number | undefined, area: number, more: Partial<Place> = {}): Place {
  return {
    id: name,
    name,
    kind: 'bed',
    situation: 'open ground',
    medium: 'mineral',
    area,
    depth: 0.2,
    texture: { name: 'loam', parts: { sand: 0.4, silt: 0.4, clay: 0.2 }, basis: 'class' },
    organicMatter: 0.04,
    plants: [],
    applications: [],
    tests:
      ph === undefined
        ? []
        : [
            {
              id: `${name}-test`,
              date: '2026-10-01',
              instrument: 'laboratory',
              depth: 0.2,
              cores: 12,
              ph: { value: ph, method: 'water-1:1' },
            },
          ],
    ...more,
  };
}

export const plant = (name: string, low: number, high: number, more: Partial<PlantRange> = {}): PlantRange => ({
  key: `test ${name}`,
  name,
  low,
  high,
  aim: (low + high) / 2,
  reaction: high <= 6 ? 'acid-loving' : 'neutral',
  sources: ['SORREL'],
  basis: 'judgement',
  ...more,
});

export const input = (more: Partial<PlacingInput> & Pick<PlacingInput, 'places' | 'wishes'>): PlacingInput => ({
  seasons: 1,
  products: [],
  settings,
  piece: 1,
  ...more,
});

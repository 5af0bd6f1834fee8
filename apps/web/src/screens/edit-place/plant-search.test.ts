import { describe, expect, it } from 'vitest';
import { searchPlants } from './plant-search.ts';

const names = (typed: string) => searchPlants(typed).map((plant) => plant.name.toLowerCase());

// What a gardener types first; common practice, no source.
describe('looking up a plant', () => {
  it('finds by the first letters, by a later word, and by the exact name first', () => {
    expect(names('tom')[0]).toMatch(/^tom/);
    expect(names('highbush').some((name) => name.includes('blueberry'))).toBe(true);
    expect(names('carrot')[0]).toBe('carrot');
  });

  it('offers what looks alike when nothing fits', () => {
    expect(names('bluebery').some((name) => name.includes('blueberry'))).toBe(true);
  });

  it('offers plants with a range for pots alone only where they can be planned for', () => {
    expect(names('calibrachoa')).not.toContain('calibrachoa');
    expect(searchPlants('calibr', 12, 'pots').map((plant) => plant.key)).toContain('calibrachoa');
    expect(searchPlants('yarrow', 12, 'pots').map((plant) => plant.key)).not.toContain('yarrow');
    expect(searchPlants('yarrow', 12, 'all').map((plant) => plant.key)).toEqual(['yarrow']);
  });

  it('offers nothing for nothing, and never too many', () => {
    expect(searchPlants('  ')).toEqual([]);
    expect(searchPlants('a').length).toBeLessThanOrEqual(12);
  });
});

import { describe, expect, it } from 'vitest';
import { plantRanges, publishedRange } from './plant-ranges.ts';
import { findPlant, nearestPlants, plantByKey, plants } from './plants.ts';

// What a gardener types first; common practice, no source.
const COMMON = [
  ...['tomato', 'carrot', 'potato', 'bean', 'pea', 'lettuce', 'kale', 'cabbage', 'garlic', 'onion', 'strawberry'],
  ...['raspberry', 'blueberry', 'rhubarb', 'asparagus', 'hydrangea', 'rhododendron', 'azalea', 'lavender', 'rosemary'],
  ...['dahlia', 'rose', 'apple', 'grass', 'lawn', 'spinach', 'beet', 'squash', 'cucumber', 'pepper', 'basil', 'thyme'],
  ...['chard', 'leek', 'radish', 'turnip', 'broccoli'],
];
const PLURALS = ['tomatoes', 'radishes', 'strawberries', 'peas', 'leeks', 'roses', 'chives', 'brussels sprouts'];

describe('plants', () => {
  it('finds each by its key, its printed name and its second names', () => {
    for (const plant of plants) {
      expect(plantByKey(plant.key)).toBe(plant);
      expect(findPlant(plant.key)).toBe(plant);
      expect(findPlant(plant.name), plant.name).toBe(plant);
      for (const name of plant.also) expect(findPlant(name), name).toBe(plant);
    }
    expect(new Set(plants.map((plant) => plant.key)).size).toBe(plants.length);
  });

  it.each([...COMMON, ...PLURALS])('knows what %s is', (name) => {
    expect(findPlant(name)).toBeDefined();
  });

  it('takes a name any way round, in any capitals and number, or in Latin', () => {
    const blueberry = plantByKey('blueberry-highbush');
    for (const name of ['Blueberry, highbush', 'highbush blueberry', 'HIGHBUSH BLUEBERRIES', ' vaccinium corymbosum '])
      expect(findPlant(name), name).toBe(blueberry);
    expect(findPlant('courgettes')?.key).toBe('squash-summer');
    expect(findPlant('Swede')?.key).toBe('rutabaga');
    expect(findPlant('potatoes')?.key).toBe('potato');
  });

  it('does not guess, and offers what looks alike', () => {
    expect(findPlant('tomatoe')).toBeUndefined();
    expect(nearestPlants('tomatoe')[0]?.key).toBe('tomato');
    expect(nearestPlants('rasberry', 1).map((plant) => plant.key)).toEqual(['raspberry-red']);
    expect(nearestPlants('rhodedendron')[0]?.key).toBe('rhododendron');
    expect(nearestPlants('xyzzy')).toEqual([]);
    expect(findPlant('')).toBeUndefined();
  });

  it('keeps every aim and best range inside what the plant stands', () => {
    for (const plant of plants) {
      expect(plant.low, plant.key).toBeLessThanOrEqual(plant.high);
      expect(plant.aim, plant.key).toBeGreaterThanOrEqual(plant.low - 0.06);
      expect(plant.aim, plant.key).toBeLessThanOrEqual(plant.high + 0.06);
      if (plant.toleratesLow !== undefined) expect(plant.toleratesLow, plant.key).toBeLessThanOrEqual(plant.low);
      if (plant.toleratesHigh !== undefined) expect(plant.toleratesHigh, plant.key).toBeGreaterThanOrEqual(plant.high);
      expect(plant.basis === 'memory', plant.key).toBe(plant.readCount === 0);
    }
  });

  it('gives medians that lie among the published limits on soil in water', () => {
    for (const plant of plants.filter((row) => row.basis !== 'derived')) {
      const lows = plantRanges.filter(
        (row) => row.botanical === plant.botanical && row.medium === 'soil' && row.low !== undefined,
      );
      const values = lows.map((row) => row.low ?? 0);
      expect(plant.low, plant.key).toBeGreaterThanOrEqual(Math.min(...values));
      expect(plant.low, plant.key).toBeLessThanOrEqual(Math.max(...values));
    }
  });
});

describe('plant ranges', () => {
  // Published cells: fao-crop-db and usda-plants-char, read.
  it('keeps each source apart', () => {
    expect(publishedRange('Spinach', 'fao-crop-db')).toMatchObject({ low: 6, high: 7.5, toleratesLow: 5.3 });
    expect(publishedRange('yarrow', 'usda-plants-char')).toMatchObject({ toleratesLow: 6, toleratesHigh: 8 });
    expect(publishedRange('Spinach', 'usda-plants-char')).toBeUndefined();
  });

  it('keeps pots apart from the ground', () => {
    expect(publishedRange('Petunia', 'umass-2023')).toBeUndefined();
    expect(publishedRange('Petunia', 'umass-2023', 'container')).toMatchObject({ low: 5.4, high: 6.2 });
  });
});

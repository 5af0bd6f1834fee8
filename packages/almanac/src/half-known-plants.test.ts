import { describe, expect, it } from 'vitest';
import { findAnyPlant, findHalfKnownPlant, halfKnownPlants } from './half-known-plants.ts';
import { plantRanges } from './plant-ranges.ts';
import { findPlant } from './plants.ts';

describe('half-known plants', () => {
  it('are the plants of the published ranges that have no best range in the ground, and no others', () => {
    for (const row of halfKnownPlants) {
      expect(findHalfKnownPlant(row.name), row.name).toBe(row);
      expect(findPlant(row.name), row.name).toBeUndefined();
      const published = plantRanges.filter((range) => range.botanical === row.botanical && range.name === row.name);
      expect(published.length, row.name).toBeGreaterThan(0);
      for (const { medium, low } of published) if (medium === 'soil') expect(low, row.name).toBeUndefined();
    }
    for (const { name, botanical } of plantRanges)
      expect(findAnyPlant(name) ?? findAnyPlant(botanical), name).toBeDefined();
  });

  it('keep pots and found ground inside what the sources print', () => {
    for (const row of halfKnownPlants) {
      const mine = plantRanges.filter((range) => range.name === row.name);
      const inside = (value: number | undefined, printed: readonly (number | undefined)[]) => {
        if (value === undefined) return;
        const values = printed.filter((each) => each !== undefined);
        expect(value, row.name).toBeGreaterThanOrEqual(Math.min(...values));
        expect(value, row.name).toBeLessThanOrEqual(Math.max(...values));
      };
      const pots = mine.filter(({ medium }) => medium === 'container');
      inside(
        row.containerLow,
        pots.map(({ low }) => low),
      );
      inside(
        row.containerHigh,
        pots.map(({ high }) => high),
      );
      const soil = mine.filter(({ medium }) => medium === 'soil');
      inside(
        row.foundLow,
        soil.map(({ toleratesLow }) => toleratesLow),
      );
      inside(
        row.foundHigh,
        soil.map(({ toleratesHigh }) => toleratesHigh),
      );
      expect(row.containerLow ?? row.foundLow ?? row.foundHigh, row.name).toBeDefined();
    }
  });

  it('are found by any of their names', () => {
    // umd-2006 lists million bells beside calibrachoa; umass-2023 prints the range.
    expect(findAnyPlant('million bells')).toMatchObject({ key: 'calibrachoa', containerLow: 5.4, containerHigh: 6.2 });
    expect(findAnyPlant('Impatiens hawkeri')?.key).toBe('new-guinea-impatiens');
    expect(findAnyPlant('yarrow')).toMatchObject({ foundLow: 6, foundHigh: 8 });
    expect(findAnyPlant('tomatoes')?.key).toBe('tomato');
  });
});

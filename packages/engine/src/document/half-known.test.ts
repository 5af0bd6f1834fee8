import { describe, expect, it } from 'vitest';
import { readGarden } from './read-garden.ts';

const read = (place: object, plant: string) =>
  readGarden({ garden: 'Test', places: [{ name: 'Here', plants: [plant], ...place }] }, { today: '2026-10-01' });
const pots = { kind: 'container', pots: { count: 2, volume: '20 L' } };

describe('a plant without a best range in the ground', () => {
  // umass-2023: calibrachoa in pots, 5.4 to 6.2.
  it('is taken in a potting mix by its range for pots', () => {
    const { garden, problems } = read(pots, 'calibrachoa');
    expect(problems).toEqual([]);
    expect(garden.places[0]?.plants[0]).toMatchObject({ name: 'Calibrachoa', low: 5.4, high: 6.2 });
  });
  it('is not given the range for pots in the ground, and the person is told why', () => {
    const { garden, problems } = read({ size: '1 x 2 m' }, 'calibrachoa');
    expect(garden.places[0]?.plants).toEqual([]);
    expect(problems.map(({ code }) => code)).toEqual(['document.plant-only-in-pots']);
    expect(problems[0]?.message).toContain('5.4 to 6.2');
  });
  it('is not given the ground where it is found growing as a target', () => {
    expect(read({ size: '1 x 2 m' }, 'yarrow').problems[0]?.code).toBe('document.plant-only-found');
    expect(read(pots, 'yarrow').problems[0]?.code).toBe('document.plant-only-found');
    expect(read(pots, 'hibiscus').problems[0]?.message).toContain('8');
  });
});

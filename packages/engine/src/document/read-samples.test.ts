import { describe, expect, it } from 'vitest';
import { readGarden } from './read-garden.ts';
import { readSamples } from './read-samples.ts';

describe('readSamples', () => {
  it('finds the samples whose places can be read, each with its own place', () => {
    const bed = { size: '1 m x 2 m', tests: [{ date: '2026-11-01', by: 'laboratory', ph: { value: 5.4 } }] };
    const document = {
      garden: 'Soil day',
      places: [
        { ...bed, name: 'One', sample: { code: 'A1', person: 'Anna' } },
        { ...bed, name: 'Two', size: 'nonsense', sample: { code: 'A2' } },
        { ...bed, name: 'Three' },
        { ...bed, name: 'Four', sample: { code: 'A4', neighbourhood: 'Hill' } },
      ],
    };
    const { garden } = readGarden(document, { today: '2026-11-25' });
    const found = readSamples(document, garden.places);
    expect(found.map(({ place: { name }, place: _, ...said }) => [name, said])).toEqual([
      ['One', { code: 'A1', person: 'Anna' }],
      ['Four', { code: 'A4', neighbourhood: 'Hill' }],
    ]);
    expect(readSamples('nothing', garden.places)).toEqual([]);
  });
});

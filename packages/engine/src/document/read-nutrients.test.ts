import { describe, expect, it } from 'vitest';
import { readGarden } from './read-garden.ts';

const today = '2026-10-12';
const read = (nutrients: unknown, more: object = {}) =>
  readGarden(
    {
      garden: 'Test',
      places: [
        {
          name: 'Bed',
          size: '4 x 8 ft',
          ...more,
          tests: [{ date: '2026-09-14', by: 'laboratory', ph: { value: 6 }, nutrients }],
        },
      ],
    },
    { today },
  );
const levels = (nutrients: unknown, more?: object) => read(nutrients, more).garden.places[0]?.tests[0]?.nutrients;

describe('levels of nutrients', () => {
  // osu-circ587 (read): 50 ppm is 100 lb/acre.
  it('are the same by weight and by the acre', () => {
    const found = levels([
      { nutrient: 'P', by: 'mehlich-3', level: '50 ppm' },
      { nutrient: 'P', by: 'mehlich-3', level: '100 lb/acre' },
    ]);
    expect(found?.map(({ value }) => Number(value.toPrecision(9)))).toEqual([50e-6, 50e-6]);
  });
  it('of a mix are per litre of extract, ppm or mg/L alike', () => {
    const found = levels(
      [
        { nutrient: 'K', by: 'sme', level: '160 ppm' },
        { nutrient: 'K', by: 'sme', level: '160 mg/L' },
      ],
      { medium: 'soilless' },
    );
    expect(found?.map(({ value }) => Number(value.toPrecision(9)))).toEqual([0.16, 0.16]);
  });
  it.each([
    [{ nutrient: 'P', by: 'magic', level: '3 ppm' }],
    [{ nutrient: 'Pb', by: 'dtpa', level: '3 ppm' }],
    [{ nutrient: 'P', by: 'dtpa', level: '-3 ppm' }],
    [{ nutrient: 'P', by: 'dtpa', level: '3 kg' }],
    [{ nutrient: 'P', by: 'dtpa', level: '900 g/kg' }],
  ])('leave the test out and say why: %j', (entry) => {
    const { problems, garden } = read([entry]);
    expect(problems).toHaveLength(1);
    expect(problems[0]?.field).toMatch(/^tests\[0\]\.nutrients\[0\]/);
    expect(garden.places[0]?.tests).toEqual([]);
  });
});

describe('diseases of a place', () => {
  it('are known by key or name; one nobody knows is reported with the nearest', () => {
    const { garden, problems, skipped } = read([], { diseases: ['Common scab', 'clubrot'] });
    expect(garden.places[0]?.diseases).toEqual(['common-scab']);
    expect(problems).toMatchObject([{ field: 'diseases[1]', place: 'Bed' }]);
    expect(`${problems[0]?.message} ${problems[0]?.fix}`).toContain('clubroot');
    expect(skipped).toHaveLength(1);
  });
});

import { describe, expect, it } from 'vitest';
import { bed } from '../placing/testing.ts';
import { readWishes } from './read-wishes.ts';

const places = [bed('Long bed', 6, 4)];

describe('readWishes', () => {
  it('reads wishes and what is settled, in SI', () => {
    const { seasons, wishes, rules, problems } = readWishes(
      {
        seasons: 2,
        wishes: [{ plant: 'tomato', area: '20 sq ft', seasons: [2], light: 'sun' }],
        places: [
          {
            place: 'long bed',
            light: 'part shade',
            stays: [{ plant: 'blueberry', area: '1 m2' }],
            fixed: ['garlic'],
            history: [{ grew: 'potato', yearsAgo: 1 }],
          },
        ],
      },
      places,
    );
    expect(problems).toEqual([]);
    expect(seasons).toBe(2);
    expect(wishes[0]?.area).toBeCloseTo(20 * 0.09290304, 9);
    expect(rules[0]).toMatchObject({
      place: 'Long bed',
      light: 'part shade',
      stays: [{ area: 1 }],
      history: [{ yearsAgo: 1 }],
    });
    expect(rules[0]?.fixed?.[0]?.plant.key).toBe('garlic');
  });

  it('leaves out what is wrong, names it and says how to mend it', () => {
    const { wishes, rules, problems } = readWishes(
      {
        wishes: [
          { plant: 'tomato', area: '-3 m2' },
          { plant: 'tomatto', area: '3 m2' },
          { plant: 'bean', area: '3 kg' },
          { plant: 'bean', area: '3 m2', seasons: [3] },
          'bean',
          { plant: 'bean', area: '2 m2' },
        ],
        places: [{ place: 'nowhere' }, { place: 'Long bed', fixed: [{ plant: 'bean', area: 'much' }] }],
      },
      places,
    );
    expect(wishes).toHaveLength(1);
    expect(rules).toHaveLength(1);
    expect(problems).toHaveLength(7);
    for (const each of problems) {
      expect(each.field).toMatch(/^(wishes|places)\[\d\]/);
      expect(each.message + each.fix).not.toMatch(/[{}]/);
    }
    expect(problems.map(({ code }) => code)).toEqual(
      expect.arrayContaining(['placing.no-such-season', 'placing.no-such-place', 'document.unknown-plant']),
    );
  });

  it('never throws', () => {
    for (const odd of [undefined, null, '', 3, [], { wishes: 3 }, { wishes: [null] }, { wishes: [], places: [[]] }])
      expect(() => readWishes(odd, places)).not.toThrow();
  });
});

import { describe, expect, it } from 'vitest';
import { readGarden } from '../document/read-garden.ts';
import { planGarden } from './plan-garden.ts';

const planned = (certifiedOrganic: boolean) => {
  const document = {
    garden: 'Test',
    certifiedOrganic,
    places: [
      {
        name: 'Bed',
        size: '4 x 10 ft',
        soil: { texture: 'sandy loam' },
        plants: ['blueberry, highbush'],
        tests: [
          {
            date: '2026-09-14',
            by: 'laboratory',
            depth: '6 in',
            cores: 10,
            ph: { value: 6.4, in: 'water-1:1' },
            organicMatter: '3.5 %',
            carbonate: '0 %',
          },
        ],
      },
    ],
    materials: [{ material: 'ferrous-sulfate', name: 'green vitriol' }],
  };
  const { garden } = readGarden(document, { today: '2026-10-12' });
  return planGarden(garden).recommendations[0];
};

describe('a certified-organic garden', () => {
  it('is planned with what certifiers allow, and says what was left out and who decides', () => {
    const [free, bound] = [planned(false), planned(true)];
    expect(free?.applications[0]?.product.name).toBe('green vitriol');
    expect(bound?.applications.length).toBeGreaterThan(0);
    for (const { product } of bound?.applications ?? []) expect(product.material).toBe('sulfur-powder');
    expect(bound?.cautions.map(({ code }) => code)).toContain('materials.refuse-ask-certifier');
    expect(bound?.reasons.map(({ code }) => code)).toContain('plan.certified-organic');
    expect(free?.reasons.map(({ code }) => code)).not.toContain('plan.certified-organic');
  });
});

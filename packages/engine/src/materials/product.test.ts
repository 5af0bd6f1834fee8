import { bags } from '@sorrel/almanac/bags';
import { materials } from '@sorrel/almanac/materials';
import { describe, expect, it } from 'vitest';
import { defaultProduct, findMaterial, productFrom } from './product.ts';
import { questionsAbout } from './questions.ts';

describe('a product', () => {
  it('exists for every material and every bag', () => {
    for (const row of materials) expect(defaultProduct(row.key).material).toBe(row.key);
    for (const bag of bags) expect(() => defaultProduct(bag.material)).not.toThrow();
  });

  it('takes its label before the usual figures', () => {
    const found = productFrom('dolomitic-limestone', {
      name: 'Barn lime',
      neutralisingValue: 0.88,
      moisture: 0.05,
      sieves: [
        { opening: 2.36e-3, passing: 1 },
        { opening: 0.85e-3, passing: 0.9 },
        { opening: 0.25e-3, passing: 0.6 },
      ],
      magnesium: 0.08,
      density: 1400,
      bag: { mass: 18, price: 6 },
      onHand: 9,
    });
    expect(found.ok && found.value).toMatchObject({
      name: 'Barn lime',
      currency: 0.88 * 0.95,
      currencyBasis: 'label',
      efficiencyBasis: 'sieves',
      magnesium: 0.08,
      density: 1400,
      onHand: 9,
    });
    // Ohio rule: 0.6 + 0.3 · 0.6 + 0.1 · 0.2 (BCLIME).
    expect(found.ok && found.value.efficiency).toBeCloseTo(0.8, 10);
  });

  it('is found by the names people use', () => {
    for (const [name, key] of [
      ['Epsom salt', 'epsom-salt'],
      ['aglime', 'ag-lime'],
      ['Sulphate of ammonia', 'ammonium-sulfate'],
      ['wood ash', 'wood-ash-stove'],
      ['Aluminium Sulphate', 'aluminum-sulfate'],
      ['pelletised  calcitic', 'pelletized-calcitic'],
    ] as const) {
      const found = findMaterial(name);
      expect(found.ok && found.value.key, name).toBe(key);
    }
  });

  it('suggests the nearest name', () => {
    const found = productFrom('dolomitic-limstone');
    expect(!found.ok && found.problems[0]?.fix).toContain('dolomitic-limestone');
    expect(!found.ok && found.problems[0]?.field).toBe('material');
    expect(() => defaultProduct('moon dust')).toThrow(/moon dust/);
  });

  it('names the label figure that cannot be', () => {
    const found = productFrom('ag-lime', { neutralisingValue: 95, moisture: 2 });
    expect(!found.ok && found.problems.map(({ field }) => field)).toEqual(['neutralisingValue', 'moisture']);
  });

  it('answers to one material only under each name', () => {
    const seen = new Map<string, string>();
    for (const row of materials)
      for (const name of [row.key, row.name, ...row.alsoCalled]) {
        expect(seen.get(name.toLowerCase()) ?? row.key, name).toBe(row.key);
        seen.set(name.toLowerCase(), row.key);
      }
  });

  it('asks for what the dose rests on', () => {
    const codes = (key: string) => questionsAbout(defaultProduct(key)).map(({ code }) => code);
    expect(codes('ferrous-sulfate')).toEqual(['materials.ask-iron-hydrate']);
    expect(codes('aluminum-sulfate')).toEqual(['materials.ask-aluminium-hydrate']);
    expect(codes('ag-lime')).toEqual(['materials.ask-fineness']);
    expect(codes('slag')).toContain('materials.ask-analysis');
    const named = productFrom('ferrous-sulfate', { iron: 0.2 });
    expect(named.ok && questionsAbout(named.value)).toEqual([]);
  });
});

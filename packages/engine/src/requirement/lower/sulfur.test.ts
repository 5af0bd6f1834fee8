import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createRecorder, gaps } from '../../derivation/derivation.ts';
import { massPerSulfur } from '../../materials/sulfur-equivalent.ts';
import { capacityByTexture } from './by-texture.ts';
import { orchardShares } from './orchard-shares.ts';
import { aluminiumSulfatePublished, sulfatePublished } from './sulfates.ts';
import { capacityAsCarbonate, capacityAsCharge, sulfurForCapacity } from './sulfur.ts';

const positive = (max: number) => fc.double({ min: 0.001, max, noNaN: true });

describe('sulfurForCapacity', () => {
  it('gives Ontario its 350 kg/ha a unit back at the capacity its sand implies', () => {
    // 11.0 mmol/kg/pH, 198.1 kg/m² (OMAFRA, read; capacity derived).
    expect(sulfurForCapacity(0.011, 198.1, 1, 1) * 1e4).toBeCloseTo(350, -1);
  });

  it('gives the fall of a pot trial back: 0.66 g S/kg a unit at 41 mmol/kg/pH', () => {
    // KAR19, read.
    expect(sulfurForCapacity(0.041, 1, 1, 1) * 1000).toBeCloseTo(0.66, 2);
  });

  it('is zero without a fall, straight in mass, capacity and fall, and more where acid is lost', () => {
    fc.assert(
      fc.property(positive(0.1), positive(400), positive(4), (beta, mass, drop) => {
        expect(sulfurForCapacity(beta, mass, -drop)).toBe(0);
        expect(sulfurForCapacity(beta, mass, 0)).toBe(0);
        const one = sulfurForCapacity(beta, mass, drop);
        expect(sulfurForCapacity(beta, 2 * mass, drop)).toBeCloseTo(2 * one, 9);
        expect(sulfurForCapacity(2 * beta, mass, drop)).toBeCloseTo(2 * one, 9);
        expect(sulfurForCapacity(beta, mass, 2 * drop)).toBeCloseTo(2 * one, 9);
        expect(sulfurForCapacity(beta, mass, drop, 1)).toBeCloseTo(0.85 * one, 9);
      }),
    );
  });

  it('refuses what cannot be', () => {
    expect(() => sulfurForCapacity(-1, 200, 1)).toThrow(/buffer capacity/);
    expect(() => sulfurForCapacity(0.03, Number.NaN, 1)).toThrow(/soil mass/);
    for (const eta of [0, 1.1, Number.NaN]) expect(() => sulfurForCapacity(0.03, 200, 1, eta)).toThrow(/eta/);
  });

  it('shows its working', () => {
    const recorder = createRecorder();
    const sulfur = sulfurForCapacity(0.034, 198.1, 1, 1, recorder);
    expect(gaps(recorder.derivation())).toEqual([]);
    expect(recorder.derivation().steps[0]?.value).toBe(sulfur);
  });
});

describe('capacity', () => {
  // 1 mmol of acid takes 0.05004 g CaCO3 (CHEM).
  it('turns between acid and carbonate', () => {
    expect(capacityAsCarbonate(0.034) * 1000).toBeCloseTo(1.7015, 3);
    expect(capacityAsCharge(capacityAsCarbonate(0.034))).toBeCloseTo(0.034, 12);
  });

  it('is known for every texture class and for nothing else', () => {
    expect(capacityByTexture('loamy sand')).toBe(0.012);
    expect(capacityByTexture('silty clay')).toBe(0.05);
    expect(capacityByTexture('gravel')).toBeUndefined();
  });
});

describe('in place of sulfur', () => {
  it('says that 6 times iron sulfate fits neither hydrate', () => {
    // UME-CW and ILL-Q, read; formula CHEM.
    expect(sulfatePublished('iron sulfate', 'UME-CW')).toEqual([
      { value: 6, formula: undefined, sources: ['UME-CW'], basis: 'read' },
    ]);
    const ratio = (formula: string) => {
      const found = massPerSulfur(formula);
      return found.ok ? 6 / found.value : Number.NaN;
    };
    expect(ratio('FeSO4.7H2O')).toBeCloseTo(0.69, 2);
    expect(ratio('FeSO4.H2O')).toBeCloseTo(1.13, 2);
  });

  it('looks aluminium sulfate up and does not read between the cells', () => {
    // HGIC, memory: 3.0 lb/10 sq ft.
    expect(aluminiumSulfatePublished('HGIC', 7, 5)).toBeCloseTo(1.4647, 3);
    expect(aluminiumSulfatePublished('HGIC', 7.3, 5)).toBeUndefined();
  });
});

describe('orchardShares', () => {
  // ORCH-BOOK, read: halves from 7.5 to 8, thirds above.
  it('are halves, thirds, or the whole, and always all of it', () => {
    expect(orchardShares(7.5)).toHaveLength(2);
    expect(orchardShares(8)).toHaveLength(2);
    expect(orchardShares(8.1)).toHaveLength(3);
    expect(orchardShares(7)).toHaveLength(1);
    for (const ph of [6, 7.7, 8.5]) expect(orchardShares(ph).reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
  });
});

import { fastAcidifiers } from '@sorrel/almanac/fast-acidifiers';
import { describe, expect, it } from 'vitest';
import { aluminiumSulfateAcidity, ironSulfateAcidity } from './metal-sulfate.ts';
import { defaultProduct, productFrom } from './product.ts';
import { ACID_PER_SULFUR, massPerSulfur, sulfurFor } from './sulfur-equivalent.ts';

describe('acids for soil', () => {
  it('takes 0.3204 kg sulfur for 1 kg CaCO3 (CHEM)', () => {
    expect(sulfurFor(1)).toBeCloseTo(0.3204, 3);
    expect(ACID_PER_SULFUR).toBeCloseTo(3.122, 3);
  });

  it('gives the mass ratios of the acidification table, worked out apart from ours', () => {
    for (const row of fastAcidifiers) {
      if (row.how !== 'formula' || row.formula === undefined || row.basis !== 'derived') continue;
      const ratio = massPerSulfur(row.formula);
      expect(ratio.ok && Math.abs(ratio.value / row.value - 1) < 0.002, row.formula).toBe(true);
    }
  });

  it('says that limestone is no acid', () => {
    expect(massPerSulfur('CaCO3').ok).toBe(false);
  });

  it('reads the acid from the metal on the label as from the hydrate', () => {
    expect(ironSulfateAcidity(55.845 / 278.01)).toBeCloseTo(-0.36, 3);
    expect(aluminiumSulfateAcidity(53.964 / 594.34)).toBeCloseTo(-0.505, 3);
    const dried = productFrom('ferrous-sulfate', { iron: 0.3287 });
    expect(dried.ok && dried.value.currency).toBeCloseTo(defaultProduct('ferrous-sulfate-monohydrate').currency, 2);
    expect(dried.ok && dried.value.currencyBasis).toBe('label');
  });
});

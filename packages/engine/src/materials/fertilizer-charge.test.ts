import { fertilizers } from '@sorrel/almanac/fertilizers';
import { materials } from '@sorrel/almanac/materials';
import { describe, expect, it } from 'vitest';
import { chargeOfFertilizer, chargeOfMaterial } from './fertilizer-charge.ts';
import { nitrogenAcidity } from './nitrogen-acidity.ts';

const row = (key: string) => fertilizers.find((each) => each.key === key) ?? expect.fail(key);

describe('chargeOfFertilizer', () => {
  it.each([
    // Charges by the balance of elements (almanac `nitrogen-forms`, CALC): one H+ for each ammonium, none for urea.
    ['ammonium-sulfate', 1],
    ['urea', 0],
    ['ammonium-nitrate', 0],
    ['potassium-nitrate', -1],
    ['sodium-nitrate', -1],
    ['diammonium-phosphate-18-46', 0.5],
  ])('%s counts about %d', (key, charge) => {
    expect(Math.abs((chargeOfFertilizer(row(key))?.charge ?? Number.NaN) - charge)).toBeLessThan(0.1);
  });
  it('gives the printed acidity back at half of the nitrogen leached', () => {
    for (const each of fertilizers) {
      const feed = chargeOfFertilizer(each);
      if (feed === undefined) continue;
      const form = nitrogenAcidity(feed.share, 'urea', 0.5) * ((feed.charge + 0.5) / 0.5);
      expect(form).toBeCloseTo(each.publishedKgCaco3Per100kg / 100, 9);
    }
  });
  it('knows no nitrogen in potash or gypsum', () => {
    expect(chargeOfFertilizer(row('potassium-chloride'))).toBeUndefined();
    expect(chargeOfMaterial(materials.find(({ key }) => key === 'gypsum') ?? expect.fail())).toBeUndefined();
  });
});

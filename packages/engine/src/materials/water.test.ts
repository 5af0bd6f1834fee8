import { acidsForWater } from '@sorrel/almanac/acids-for-water';
import { describe, expect, it } from 'vitest';
import { createRecorder, gaps } from '../derivation/derivation.ts';
import { alkalinityFrom, alkalinityIn, judgeAlkalinity } from './alkalinity.ts';
import { organicCurrency, organicLimeValue } from './organic-value.ts';
import { acidStrength, acidVolume, alkalinityAtPh, homeAcidDose } from './water-acid.ts';
import { waterLoad } from './water-load.ts';

const GALLONS_100 = 0.378541;
const FLUID_OUNCE = 29.5735e-6;

describe('irrigation water', () => {
  // SLIDEALK: 3 meq/L is 150 mg CaCO3/L and 183 mg HCO3/L. German degree: 17.85 mg CaCO3/L (common practice, no source).
  it('knows the units of alkalinity', () => {
    expect(alkalinityIn(3, 'mg CaCO3/L')).toBeCloseTo(150, 0);
    expect(alkalinityIn(3, 'mg HCO3/L')).toBeCloseTo(183, 0);
    expect(alkalinityIn(alkalinityFrom(1, 'dH'), 'mg CaCO3/L')).toBeCloseTo(17.85, 2);
  });

  // Reference table: 100 mg/L gives 0.0236 kg CaCO3 per inch on 100 sq ft; 2.719 lb per acre-foot per mg/L.
  it('brings lime', () => {
    const recorder = createRecorder();
    expect(waterLoad(alkalinityFrom(100, 'mg CaCO3/L'), 0.0254, 0, recorder) * 9.290304).toBeCloseTo(0.0236, 4);
    expect((waterLoad(alkalinityFrom(1, 'mg CaCO3/L'), 0.3048) * 4046.856) / 0.45359237).toBeCloseTo(2.719, 2);
    expect(gaps(recorder.derivation())).toEqual([]);
  });

  it('has the strength of every acid of the almanac', () => {
    for (const row of acidsForWater) {
      if (row.specificGravity === undefined) continue;
      const strength = acidStrength({
        formula: row.formula,
        share: row.percent / 100,
        density: row.specificGravity * 1000,
        equivalentsPerMol: row.equivalentsPerMol,
      });
      expect(strength.ok && Math.abs(strength.value / 1000 / row.strength - 1) < 0.005, row.key).toBe(true);
    }
  });

  // ACIDT: 1.42 fl oz of 35 % sulfuric acid takes 50 mg/L out of 100 US gal.
  it('takes the printed volume of acid', () => {
    const strength = acidStrength({ formula: 'H2SO4', share: 0.35, density: 1260, equivalentsPerMol: 2 });
    if (!strength.ok) throw new Error('strength');
    const recorder = createRecorder();
    const volume = acidVolume(GALLONS_100, alkalinityFrom(50, 'mg CaCO3/L'), strength.value, recorder);
    expect(volume / FLUID_OUNCE).toBeCloseTo(1.42, 1);
    expect(gaps(recorder.derivation())).toEqual([]);
  });

  // Reference note, section 7: at pH 5.8 about 22 % is left, at 6.2 about 41 % (from well above).
  it('leaves the alkalinity that a pH allows', () => {
    expect(alkalinityAtPh(1, 12, 5.8)).toBeCloseTo(0.22, 2);
    expect(alkalinityAtPh(1, 12, 6.2)).toBeCloseTo(0.41, 2);
  });

  it('doses only citric acid at home', () => {
    const citric = homeAcidDose('citric-dry', GALLONS_100, alkalinityFrom(1, 'mg CaCO3/L'));
    // Reference table: 0.69 g per 100 US gal per mg/L.
    expect(citric.ok && citric.value * 1000).toBeCloseTo(0.69, 2);
    for (const row of acidsForWater)
      if (row.key !== 'citric-dry') expect(homeAcidDose(row.key, 1, 1).ok, row.key).toBe(false);
    expect(homeAcidDose('battery fluid', 1, 1).ok).toBe(false);
  });

  // NCSU_ALK (memory): 2.2 meq/L for 4-5 inch pots; ALK_SLIDES: act above 150 mg/L.
  it('judges water by the size of the pot', () => {
    const states = [30, 100, 120, 160].map(
      (mg) => judgeAlkalinity(alkalinityFrom(mg, 'mg CaCO3/L'), '4-5 inch pots').state,
    );
    expect(states).toEqual(['low', 'fine', 'watch', 'act']);
  });
});

describe('compost and manure', () => {
  // ICHA24: 357 cmol/kg is 179 g CaCO3/kg; straw 11.7 is 5.8.
  it('limes by its alkalinity', () => {
    expect(organicLimeValue(3.57) * 1000).toBeCloseTo(179, 0);
    expect(organicLimeValue(0.117) * 1000).toBeCloseTo(5.85, 1);
    const recorder = createRecorder();
    expect(organicCurrency(10, 0.5, 0.02, recorder)).toBeCloseTo(0.1, 12);
    expect(gaps(recorder.derivation())).toEqual([]);
  });
});

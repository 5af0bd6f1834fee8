import { acidifiers } from '@sorrel/almanac/acidifiers';
import { materialFigures } from '@sorrel/almanac/material-figures';
import { nitrogenForms } from '@sorrel/almanac/nitrogen-forms';
import { describe, expect, it } from 'vitest';
import { createRecorder, gaps } from '../derivation/derivation.ts';
import { neutralisingValueOf } from './neutralising-value.ts';
import { CACO3_PER_NITROGEN, nitrogenAcidity } from './nitrogen-acidity.ts';

const value = (formula: string, leached?: number) => {
  const found = neutralisingValueOf(formula, leached);
  if (!found.ok) throw new Error(formula);
  return found.value;
};

describe('theoretical calcium carbonate equivalent', () => {
  // PASSEL44 prints 119, 135, 178 from rounded molar masses; NYFS7 179 for CaO.
  it('agrees with the printed bases to their rounding', () => {
    expect(value('CaCO3')).toBeCloseTo(1, 6);
    expect(Math.abs(value('MgCO3') - 1.19)).toBeLessThan(0.01);
    expect(Math.abs(value('Ca(OH)2') - 1.35)).toBeLessThan(0.01);
    expect(Math.abs(value('CaO') - 1.785)).toBeLessThan(0.01);
  });

  it.each([
    ['dolomite (pure)', 'CaMg(CO3)2'],
    ['magnesium oxide (pure)', 'MgO'],
    ['calcium silicate (pure)', 'CaSiO3'],
    ['potassium bicarbonate (pure)', 'KHCO3'],
    ['sodium bicarbonate (pure)', 'NaHCO3'],
    ['dolomitic hydrate type S (pure)', 'Ca(OH)2.Mg(OH)2'],
    ['dolomitic hydrate type N (pure)', 'Ca(OH)2.MgO'],
  ])('gives the almanac figure for %s', (material, formula) => {
    const row = materialFigures.find((one) => one.material === material && one.property === 'CCE_theoretical');
    expect(value(formula) * 100).toBeCloseTo(row?.typical ?? Number.NaN, 0);
  });

  it('gives the acid of every acidifier of the almanac that soil microbes do not undo', () => {
    for (const row of acidifiers) {
      if (/citric|acetic/.test(row.name)) continue;
      const leached = /taken up/.test(row.name) ? 0 : /half/.test(row.name) ? 0.5 : 1;
      expect(-value(row.formula, leached), row.name).toBeCloseTo(row.acidKgCaco3PerKg, 3);
    }
  });

  it('counts gypsum, Epsom salt, vinegar and citric acid as nothing', () => {
    for (const formula of ['CaSO4.2H2O', 'MgSO4.7H2O', 'K2SO4', 'C2H4O2', 'C6H8O7'])
      expect(value(formula)).toBeCloseTo(0, 12);
  });

  it('agrees with the factors by nitrogen form, which were worked out another way (NRCCA37, STRIPN)', () => {
    const compounds = {
      ammonium: '(NH4)2SO4',
      urea: 'CO(NH2)2',
      'ammonium nitrate': 'NH4NO3',
      nitrate: 'Ca(NO3)2',
      map: 'NH4H2PO4',
      dap: '(NH4)2HPO4',
    };
    const massPerN = {
      ammonium: 132.14 / 2,
      urea: 60.056 / 2,
      'ammonium nitrate': 80.043 / 2,
      nitrate: 164.088 / 2,
      map: 115.025,
      dap: 132.056 / 2,
    };
    for (const { form } of nitrogenForms)
      for (const leached of [0, 0.3, 0.5, 1])
        expect((value(compounds[form], leached) * massPerN[form]) / 14.007, `${form} ${leached}`).toBeCloseTo(
          nitrogenAcidity(1, form, leached),
          2,
        );
    expect(CACO3_PER_NITROGEN).toBeCloseTo(3.573, 3);
  });

  it('shows its working', () => {
    const recorder = createRecorder();
    neutralisingValueOf('MgO', 1, recorder);
    expect(gaps(recorder.derivation())).toEqual([]);
  });
});

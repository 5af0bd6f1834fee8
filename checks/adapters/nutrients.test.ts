import { describe, expect, it } from 'vitest';
import type { PlacedCase } from '../cases.ts';
import { judge } from '../judge.ts';
import { adapters } from './index.ts';

/** A case of the same shape as a published one, with other nutrients, extractants, crops or levels. */
const ask = (inputs: object, expected: object, title = 'other', tolerance = 'exact') => {
  const check = { id: 'x', title, inputs, expected, tolerance, source: 'SORREL', basis: 'read', note: '', line: 1 };
  const outcome = judge(check as PlacedCase, adapters);
  return outcome.error ?? outcome.state;
};

describe('neighbours of the published cases', () => {
  // Each figure stands in the table of the publication named in the almanac row: njaes-levels, dtpa-table, mo-greenhouse,
  // osu-ec1478 (memory), UMASS_SME, umd-2006, umd-2008, clubroot-ca, take-all-utah, symptom-text (memory), key-green.
  it.each<[string, object, object]>([
    ['another nutrient by Mehlich-3', { nutrient: 'K', lb_per_acre: 278 }, { class: 'very high (excess)' }],
    ['a name for a symbol', { nutrient: 'magnesium', lb_per_acre: 45 }, { class: 'very low' }],
    ['ppm read by a table in lb/acre', { nutrient: 'P', extractant: 'Mehlich-3', ppm: 30 }, { class: 'medium' }],
    ['Mehlich-3 zinc', { nutrient: 'Zn', extractant: 'Mehlich-3', ppm: 0.6 }, { class: 'deficient' }],
    ['Olsen', { nutrient: 'P', extractant: 'Olsen', ppm: 12 }, { class: 'medium' }],
    ['Bray', { nutrient: 'P', extractant: 'Bray P1', ppm: 50 }, { class: 'high' }],
    ['hot-water boron', { nutrient: 'B', extractant: 'hot water', ppm: 0.3 }, { class: 'low' }],
    ['DTPA', { nutrient: 'Cu', mg_per_kg: 0.3 }, { class: 'low' }],
    ['a mix', { analysis: 'Ca', value: 100 }, { class: 'acceptable' }],
    ['a mix, micronutrient', { analysis: 'Fe', value: 1 }, { class: 'normal' }],
    ['manganese, short', { mn_ppm: 3, ph: 7 }, { index: 6.55, class: 'deficient' }],
    ['a pot crop', { crop: 'pansy', medium: 'soilless', ph: 6.6 }, { flag: 'iron deficiency risk' }],
    ['clubroot in sour soil', { crop: 'kale', disease: 'clubroot', ph: 6 }, { risk: 'favoured' }],
    [
      'take-all the other way',
      { crop: 'bentgrass', disease: 'take-all patch', ph_from: 7, ph_to: 6 },
      { incidence: 'falls' },
    ],
    [
      'one disease only',
      { crops: ['cabbage', 'potato'], clubroot_present: true, scab_present: false },
      { compatible: true },
    ],
    ['two crops without a common range', { crops: ['blueberry', 'asparagus'] }, { compatible: false }],
    ['old leaves, evenly pale', { leaf: 'older', pattern: 'uniform' }, { first_candidate: 'N' }],
    ['old leaves, edges', { leaf: 'older', pattern: 'marginal scorch' }, { first_candidate: 'K' }],
    ['an ion', { ph_from: 6, ph_to: 5, element: 'Al' }, { factor: 1000 }],
  ])('%s', (_, inputs, expected) => expect(ask(inputs, expected, 'other', '1e-9')).toBe('within'));

  it('takes an acid from the heading, as the published cases give it nowhere else', () => {
    expect(ask({ ph: 9.24 }, { fraction: 0.5 }, 'boron as uncharged boric acid', '0.001')).toBe('within');
    expect(ask({ ph: 9.25 }, { fraction: 0.5 }, 'ammonium as ammonia', '0.001')).toBe('within');
    expect(ask({ ph: 7.2 }, { fraction: 0.5 }, 'phosphate as HPO4(2-)', '0.001')).toBe('within');
    expect(ask({ ph: 7.2 }, { fraction: 0.5 })).toBe('no acid is named');
  });

  it('misses when the published figure is another, and fails where it knows nothing', () => {
    expect(ask({ nutrient: 'P', lb_per_acre: 60 }, { class: 'low' })).toBe('miss');
    expect(ask({ crop: 'tomato', disease: 'clubroot', ph: 6 }, { risk: 'favoured' })).toMatch(/does not catch/);
    expect(ask({ leaf: 'older', pattern: 'plaid' }, { first_candidate: 'N' })).toMatch(/fits no answer/);
  });
});

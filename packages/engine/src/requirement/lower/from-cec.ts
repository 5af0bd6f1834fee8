import { acidificationParameter } from '@sorrel/almanac/acidification-parameters';
import { TEST_FOR_LIME_FROM } from '../../soil/free-lime.ts';
import type { MethodOutcome, RequirementMethod } from '../method.ts';
import { NOT_GIVEN } from '../outcome.ts';
import { readCapacity } from './capacity-reading.ts';
import { limeKnown } from './limy.ts';

/** mmol H+/kg/pH for each cmol/kg of CEC. */
const row = acidificationParameter('beta per CEC');

const outside = (code: 'lower.cec-inflated' | 'lower.cec-effective' | 'lower.not-for-medium'): MethodOutcome => ({
  state: 'outside',
  reason: { code, parameters: { table: fromCec.title } },
});

/**
 * Buffer capacity from the cation exchange capacity: `beta = 3.4 x CEC`, mmol/kg/pH for CEC in cmol/kg; about
 * 100 lb S/acre per pH unit for each meq/100 g. Derived from Michigan's texture classes and their CEC. [MSU-R]
 * A CEC summed from cations is too high in soil with free lime, and an effective CEC too low in sour soil.
 */
export const fromCec: RequirementMethod = {
  id: 'capacity-from-cec',
  title: 'resistance from the cation exchange capacity',
  kind: 'cec',
  direction: 'both',
  regions: ['Michigan'],
  referenceDepth: null,
  allowance: 1,
  sdLog: { matching: 0.35, foreign: 0.45 },
  domain: 'mineral soil, CEC at pH 7 of about 3 to 25 cmol/kg; spread 40 %',
  sources: row.sources,
  basis: 'derived',
  read(input, recorder) {
    const { cec, cecBasis } = input.test;
    if (cec === undefined || !(cec > 0)) return NOT_GIVEN;
    if (input.medium === 'organic' || input.medium === 'soilless') return outside('lower.not-for-medium');
    if (cecBasis === 'effective') return outside('lower.cec-effective');
    if (cecBasis !== 'pH 7' && (limeKnown(input) === 'some' || input.present.mean > TEST_FOR_LIME_FROM))
      return outside('lower.cec-inflated');
    // cec is mol/kg: x 100 gives cmol/kg, / 1000 turns mmol into mol.
    return readCapacity(fromCec, input, (row.value * cec * 100) / 1000, recorder, {
      formula: 'beta = 3.4 x CEC',
      terms: [
        { symbol: '3.4', value: row.value, unit: row.unit, origin: 'table', source: 'MSU-R' },
        { symbol: 'CEC', value: cec * 100, unit: 'cmol/kg', origin: 'entered' },
      ],
    });
  },
};

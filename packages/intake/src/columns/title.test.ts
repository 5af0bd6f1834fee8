import { describe, expect, it } from 'vitest';
import { readTitle } from './title.ts';

// Titles made up after the generic synonyms of the reference (lab_fields: UMN_PH, CONYERS_1988, COURSE_NOTES and others).
describe('readTitle', () => {
  it.each([
    [['pH'], 'ph', undefined, undefined],
    [['Soil pH (1:1 water)'], 'ph', undefined, 'water-1:1'],
    [['pH 1:2.5 H2O'], 'ph', undefined, 'water-1:2.5'],
    [['pH (1:5 CaCl2)'], 'ph', undefined, 'cacl2-0.01M'],
    [['pHCa'], 'ph', undefined, undefined],
    [['Buffer pH (Sikora)'], 'buffer-ph', undefined, undefined],
    [['OM_%'], 'organic-matter', '%', undefined],
    [['% OM'], 'organic-matter', '%', undefined],
    [['Organic Matter, %'], 'organic-matter', '%', undefined],
    [['CEC (meq/100 g)'], 'cec', 'meq/100 g', undefined],
    [['CEC cmol(+)/kg'], 'cec', 'cmol(+)/kg', undefined],
    [['Ca mg/kg'], 'calcium', 'mg/kg', undefined],
    [['ppm Ca'], 'calcium', 'ppm', undefined],
    [['Mehlich-3 Ca (lb/acre)'], 'calcium', 'lb/acre', undefined],
    [['Exchangeable cations (cmol/kg)', 'Mg'], 'magnesium', 'cmol/kg', undefined],
    [['Mg', 'mg/kg'], 'magnesium', 'mg/kg', undefined],
    [['P-Olsen'], 'phosphorus', undefined, undefined],
    [['Bray P1 ppm'], 'phosphorus', 'ppm', undefined],
    [['Sample Description'], 'place', undefined, undefined],
    [['EC µS/cm'], 'conductivity', 'µS/cm', undefined],
    [['Humus-Gehalt (%)'], 'organic-matter', '%', undefined],
  ] as const)('%s', (parts, meaning, unit, method) => {
    const read = readTitle(parts);
    expect(read?.name.meaning).toBe(meaning);
    expect(read?.unit).toBe(unit);
    if (method !== undefined) expect(read?.method).toBe(method);
  });
  it.each([[['Gradient']], [['Invented laboratory, 12 Test Street']], [['']]])('%s is no name', (parts) =>
    expect(readTitle(parts)).toBeUndefined(),
  );
});

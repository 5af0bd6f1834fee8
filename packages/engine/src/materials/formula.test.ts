import { createRequire } from 'node:module';
import { acidifiers } from '@sorrel/almanac/acidifiers';
import { describe, expect, it } from 'vitest';
import { molarMass, parseFormula } from './formula.ts';

// An independent parser with its own table of isotope masses, which ships without types.
const MolecularFormula = createRequire(import.meta.url)('molecular-formula') as new (
  formula: string,
) => { getMass(): number; getComposition(): Record<string, number> };

const composition = (formula: string) => {
  const parsed = parseFormula(formula);
  if (!parsed.ok) throw new Error(parsed.problems[0]?.message);
  return parsed.value;
};

describe('reading a chemical formula', () => {
  it.each(['CaCO3', 'CaMg(CO3)2', 'Ca(OH)2', 'Al2(SO4)3', 'KAl(SO4)2', 'C6H8O7', '(NH4)2SO4', 'Fe2(SO4)3', 'NH4H2PO4'])(
    'reads %s as the molecular-formula library does, to 1 part in 5000 of its mass',
    (formula) => {
      const other = new MolecularFormula(formula);
      expect(Object.fromEntries(composition(formula))).toEqual(other.getComposition());
      expect(Math.abs((molarMass(composition(formula)) * 1000) / other.getMass() - 1)).toBeLessThan(2e-4);
    },
  );

  it('counts water of crystallisation', () => {
    expect(Object.fromEntries(composition('FeSO4·7H2O'))).toEqual({ Fe: 1, S: 1, O: 11, H: 14 });
    expect(composition('FeSO4.7H2O')).toEqual(composition('FeSO4 · 7 H2O'));
  });

  it('names the part it cannot read', () => {
    for (const wrong of ['', 'caco3', 'CaCO3)', 'Ca(OH', 'Xx2O', 'FeSO4.']) {
      const read = parseFormula(wrong);
      expect(read.ok).toBe(false);
      if (!read.ok) expect(read.problems[0]?.fix).toMatch(/Write it like/);
    }
  });

  // Table of pure acidifiers: molar masses worked out by others from IUPAC masses (CALC).
  it('weighs the compounds of the almanac', () => {
    for (const row of acidifiers)
      expect(molarMass(composition(row.formula)) * 1000, row.formula).toBeCloseTo(row.molarMassGPerMol, 1);
  });
});

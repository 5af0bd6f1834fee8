import {
  ACID_PER_SULFUR,
  aluminiumSulfateAcidity,
  findMaterial,
  ironSulfateAcidity,
  massPerSulfur,
  molarMass,
  neutralisingValueOf,
  parseFormula,
  sulfurFor,
  toCalciumOxide,
} from '@sorrel/engine/materials';
import type { Adapter, CheckCase } from '../../adapter.ts';
import { answers, expects, given, kgIn, numberAt, textAt } from './shapes.ts';

/** The formula a case means: written out, or that of the material it names. */
function formulaOf({ inputs }: CheckCase): string | undefined {
  const text = textAt(inputs, /^(formula|compound|material)$/);
  if (text === undefined) return undefined;
  if (parseFormula(text).ok) return text;
  const plain = text.replace(/\(.*?\)/g, '').trim();
  const found = findMaterial(plain);
  return found.ok ? found.value.formula : undefined;
}

const wants = (check: CheckCase) =>
  expects(check, /^CCE|equal_to_2000|per_kg_S|x_sulfur|molar|CaCO3_(kg|per)|acid_per_kg|NV_pct_CaO/);

/** Pure compounds and acids for soil. */
export const acids: readonly Adapter[] = [
  {
    name: 'theoretical value of a compound',
    accepts: (check) =>
      formulaOf(check) !== undefined &&
      numberAt(check.inputs, /^(S|sulfur)_/) === undefined &&
      !('material' in check.inputs && 'x_sulfur' in check.expected) &&
      wants(check),
    compute: (check) => {
      const formula = formulaOf(check) ?? '';
      const leached = numberAt(check.inputs, /leach/) ?? 1;
      return answers(check, (key) => {
        if (/per_kg_S|x_sulfur/.test(key)) return given(massPerSulfur(formula));
        if (/molar/.test(key)) return molarMass(given(parseFormula(formula))) * 1000;
        const value = given(neutralisingValueOf(formula, leached));
        if (/equal_to_2000/.test(key)) return 2000 / value;
        if (/CaO/.test(key)) return toCalciumOxide(value) * 100;
        // Acids are printed as the CaCO3 they use up, without a sign.
        if (/^CCE/.test(key)) return value * 100;
        return /100/.test(key) ? value * 100 : Math.abs(value);
      });
    },
  },
  {
    name: 'acid from the metal on the label',
    accepts: (check) => numberAt(check.inputs, /^(Fe|Al)_pct$/) !== undefined && expects(check, /CaCO3/),
    compute: (check) => {
      const iron = numberAt(check.inputs, /^Fe_pct$/);
      const value =
        iron === undefined
          ? aluminiumSulfateAcidity((numberAt(check.inputs, /^Al_pct$/) ?? 0) / 100)
          : ironSulfateAcidity(iron / 100);
      return answers(check, () => -value);
    },
  },
  {
    name: 'sulfur for lime, in pounds or grams',
    accepts: ({ inputs, expected }) =>
      Object.keys(inputs).length === 1 &&
      Object.keys(expected).length === 1 &&
      numberAt(inputs, /^CaCO3_(lb|g)$/) !== undefined &&
      numberAt(expected, /^(S|sulfur)_(lb|g)$/) !== undefined,
    compute: (check) => {
      const [from = '', amount] = Object.entries(check.inputs)[0] ?? [];
      return answers(check, (key) => (sulfurFor(Number(amount)) * kgIn(from)) / kgIn(key));
    },
  },
  {
    name: 'lime for sulfur, in pounds or grams',
    accepts: ({ inputs, expected }) =>
      Object.keys(inputs).length === 1 &&
      numberAt(inputs, /^(S|sulfur)_(lb|g)$/) !== undefined &&
      numberAt(expected, /^CaCO3_(lb|g)$/) !== undefined,
    compute: (check) => {
      const [from = '', amount] = Object.entries(check.inputs)[0] ?? [];
      return answers(check, (key) => (ACID_PER_SULFUR * Number(amount) * kgIn(from)) / kgIn(key));
    },
  },
  {
    name: 'another acidifier in place of sulfur',
    accepts: (check) => formulaOf(check) !== undefined && numberAt(check.inputs, /^(S|sulfur)_(kg|lb|g)/) !== undefined,
    compute: (check) => {
      const sulfur = numberAt(check.inputs, /^(S|sulfur)_/) ?? 0;
      return answers(check, () => sulfur * given(massPerSulfur(formulaOf(check) ?? '')));
    },
  },
  {
    name: 'ratio of two printed rates',
    accepts: ({ inputs, expected }) =>
      'ratio' in expected && numberAt(inputs, /^sulfur_/) !== undefined && numberAt(inputs, /sulfate_/) !== undefined,
    compute: ({ inputs }) => ({
      ratio: (numberAt(inputs, /sulfate_/) ?? Number.NaN) / (numberAt(inputs, /^sulfur_/) ?? Number.NaN),
    }),
  },
];

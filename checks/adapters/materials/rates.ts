import { materialFigures } from '@sorrel/almanac/material-figures';
import {
  ashNeutralisingValue,
  type Contents,
  currencyOf,
  findMaterial,
  fromCalciumOxide,
  organicLimeValue,
  productFrom,
  productRate,
  titratedNeutralisingValue,
  toCalciumOxide,
  valueBySubstitution,
} from '@sorrel/engine/materials';
import type { Adapter, CheckCase } from '../../adapter.ts';
import { efficiencyOf, hasFineness } from './fineness.ts';
import { answers, expects, given, numberAt, tableAt, textAt } from './shapes.ts';

/** A rate printed for a standard lime, and the index of the lime at hand. */
function conversion(check: CheckCase): { rate: number; standard: number; index: number } | undefined {
  const { inputs } = check;
  const ratio = Object.keys(inputs)
    .map((key) => /^(ENM|ECCE|ENP|ENV|RNV|ECC|NI|EP)_?(lb_)?(recommended|rec|needed|per_acre)/.exec(key)?.[1])
    .find(Boolean);
  if (ratio !== undefined) {
    const rate = numberAt(inputs, new RegExp(`^${ratio}_?(lb_)?(recommended|rec|needed|per_acre)`));
    const index = numberAt(inputs, new RegExp(`^${ratio}_?(lb_)?(lime|product|material|per_ton)|^lb_${ratio}_per_ton`));
    return rate === undefined || index === undefined ? undefined : { rate, standard: 1, index };
  }
  const rate = numberAt(inputs, /^(rec|recommended|recommendation|lime|limestone|rate)(_|$)/);
  const printed = numberAt(
    inputs,
    /^(?!standard|assumed)(.*_)?(CCE|cce|NV|ENV|RNV|ECCE|ECC|NI|EP|equivalency|index)(_pct|_lime|_product|_material)?$/,
  );
  if (rate === undefined || printed === undefined) return undefined;
  // A neutralising value with fineness figures beside it makes the effective index.
  const raw = numberAt(inputs, /^(?!standard|assumed)(.*_)?(CCE|cce|NV)(_pct)?$/) !== undefined;
  const index = raw && hasFineness(check) ? printed * efficiencyOf(check) : printed;
  return { rate, index, standard: numberAt(inputs, /standard|assumed/) ?? 100 };
}

/** Rates corrected for the lime at hand, measured neutralising values, ash. */
export const rates: readonly Adapter[] = [
  {
    name: 'rate of the lime at hand',
    accepts: (check) =>
      conversion(check) !== undefined &&
      // This one shape belongs to the lime requirement cases.
      !('rec_lb_100sqft' in check.inputs && 'CCE' in check.inputs) &&
      Object.keys(check.expected).length === 1 &&
      !expects(check, /CCE|cost|price/),
    compute: (check) => {
      const found = conversion(check);
      if (found === undefined) throw new Error('no rate');
      return answers(check, () => productRate(found.rate, found.standard, found.index));
    },
  },
  {
    name: 'neutralising value by titration',
    accepts: ({ inputs }) => 'sample_g' in inputs && numberAt(inputs, /^(HCl|acid).*_mL$/) !== undefined,
    compute: (check) => {
      const { inputs } = check;
      const strength = numberAt(inputs, /^(HCl|acid)_M$/) ?? 0.5;
      const back = (numberAt(inputs, /^NaOH.*_mL$/) ?? 0) * (numberAt(inputs, /^NaOH_M$/) ?? strength);
      const consumed =
        numberAt(inputs, /consumed.*_mL$/) ?? (numberAt(inputs, /^(HCl|acid).*_mL$/) ?? 0) - back / strength;
      const value = titratedNeutralisingValue({
        sample: (numberAt(inputs, /^sample_g$/) ?? 0) / 1000,
        acid: strength * 1000,
        consumed: consumed / 1e6,
      });
      return answers(check, (key) => 100 * (/CaO/.test(key) ? toCalciumOxide(value) : value));
    },
  },
  {
    name: 'neutralising value in another country',
    accepts: (check) =>
      Object.keys(check.inputs).length === 1 &&
      numberAt(check.inputs, /^NV_(pct_)?CaO|^NV_UK|^CCE_pct$/) !== undefined &&
      expects(check, /^CCE|CaO/),
    compute: (check) => {
      const nv = numberAt(check.inputs, /CaO|UK/);
      const cce = nv === undefined ? numberAt(check.inputs, /^CCE/) : fromCalciumOxide(nv);
      return answers(check, (key) => (/CaO/.test(key) ? toCalciumOxide(cce ?? Number.NaN) : cce));
    },
  },
  {
    name: 'value of ash by what it replaces',
    accepts: (check) =>
      numberAt(check.inputs, /^ash_/) !== undefined &&
      numberAt(check.inputs, /^lime(stone)?_(lb|kg)/) !== undefined &&
      expects(check, /^CCE/),
    compute: (check) =>
      answers(
        check,
        () =>
          100 *
          valueBySubstitution(
            numberAt(check.inputs, /^lime/) ?? 0,
            numberAt(check.inputs, /^ash/) ?? 0,
            (numberAt(check.inputs, /CCE/) ?? 100) / 100,
          ),
      ),
  },
  {
    name: 'value of a material by its CaCO3',
    accepts: (check) =>
      Object.keys(check.inputs).length === 1 &&
      numberAt(check.inputs, /CaCO3_(lb_per_ton|g_per_kg|kg_per_t)/) !== undefined &&
      expects(check, /^CCE/),
    compute: (check) =>
      answers(check, () =>
        'CaCO3_lb_per_ton' in check.inputs
          ? (numberAt(check.inputs, /CaCO3/) ?? 0) / 20
          : (numberAt(check.inputs, /CaCO3/) ?? 0) / 10,
      ),
  },
  {
    name: 'value of an ash by its bases',
    accepts: (check) =>
      tableAt(check.inputs, /^(g_per_kg|pct|g_kg)$/) !== undefined &&
      'Ca' in (tableAt(check.inputs, /^(g_per_kg|pct|g_kg)$/) ?? {}) &&
      expects(check, /^CCE/),
    compute: (check) => {
      const scale = 'pct' in check.inputs ? 100 : 1000;
      const contents = Object.fromEntries(
        Object.entries(tableAt(check.inputs, /^(g_per_kg|pct|g_kg)$/) ?? {}).map(([k, v]) => [k, v / scale]),
      );
      return answers(check, () => 100 * ashNeutralisingValue(contents as Contents));
    },
  },
  {
    name: 'ash in place of lime',
    accepts: (check) => numberAt(check.inputs, /^ash_/) !== undefined && expects(check, /^lime(stone)?_(lb|kg)/),
    compute: (check) => {
      const ash = numberAt(check.inputs, /^ash_/) ?? 0;
      const own = numberAt(check.inputs, /CCE|equivalency/);
      // Without an analysis: the range an old garden text gives, half to three quarters of limestone.
      const row = materialFigures.find(({ sources, property }) => sources.includes('NCARCH91') && property === 'CCE');
      const lime = (value: number | undefined) =>
        currencyOf(
          ash,
          given(productFrom('wood-ash-stove', value === undefined ? {} : { neutralisingValue: value / 100 })),
        );
      return answers(check, (key) =>
        own !== undefined || !Array.isArray(check.expected[key]) ? lime(own) : [lime(row?.low), lime(row?.high)],
      );
    },
  },
  {
    name: 'published range of a material',
    accepts: (check) =>
      Object.keys(check.inputs).length === 1 &&
      textAt(check.inputs, /^material$/) !== undefined &&
      expects(check, /^(low|high|typical|default)(_pct)?$/),
    compute: (check) => {
      const name = textAt(check.inputs, /^material$/) ?? '';
      const printed = materialFigures.find(({ material, property }) => material === name && property === 'CCE');
      const row = printed === undefined ? given(findMaterial(name)) : undefined;
      const figures: Record<string, number | undefined> = {
        low: printed?.low ?? (row === undefined ? undefined : row.nvLow * 100),
        high: printed?.high ?? (row === undefined ? undefined : row.nvHigh * 100),
        typical: printed?.typical ?? (row === undefined ? undefined : row.nvTypical * 100),
      };
      return answers(check, (key) => figures[key.replace(/_pct$/, '').replace('default', 'typical')]);
    },
  },
  {
    name: 'lime value of organic matter',
    accepts: (check) => numberAt(check.inputs, /^(cmol|meq|mmol)/) !== undefined && expects(check, /^CCE/),
    compute: (check) => {
      const perKg = numberAt(check.inputs, /^(cmol|meq|mmol)/) ?? 0;
      const value = organicLimeValue(
        'cmol_H_per_kg' in check.inputs || /^cmol/.test(Object.keys(check.inputs)[0] ?? '')
          ? perKg / 100
          : perKg / 1000,
      );
      return answers(check, (key) => value * (/^CCE/.test(key) ? 100 : /^g_/.test(key) ? 1000 : 1));
    },
  },
];

import { acidsForWater } from '@sorrel/almanac/acids-for-water';
import {
  type AlkalinityUnit,
  acidStrength,
  acidVolume,
  alkalinityAtPh,
  alkalinityFrom,
  alkalinityIn,
  molarMass,
  parseFormula,
  waterLoad,
} from '@sorrel/engine/materials';
import type { Adapter, CheckCase } from '../../adapter.ts';
import { answers, expects, given, numberAt, textAt } from './shapes.ts';

const GALLON = 0.003785411784;
const FLUID_OUNCE = GALLON / 128;

const NAMES: readonly (readonly [RegExp, string])[] = [
  [/H2SO4|sulfuric|sulphuric/i, 'H2SO4'],
  [/HNO3|nitric/i, 'HNO3'],
  [/H3PO4|phosphoric/i, 'H3PO4'],
  [/HCl|hydrochloric|muriatic/i, 'HCl'],
  [/C6H8O7|citric/i, 'C6H8O7'],
];

/** The acid of the almanac a case names, e.g. `H2SO4 35%`, with the case's own density and strength before the table's. */
function acidNamed(name: string, inputs: CheckCase['inputs']) {
  const formula = NAMES.find(([pattern]) => pattern.test(name))?.[1];
  const percent =
    numberAt(inputs, /^(acid_)?(pct|percent|strength)/) ?? Number(/([\d.]+)\s*%/.exec(name)?.[1] ?? Number.NaN);
  const rows = acidsForWater.filter((row) => row.formula === formula && row.strengthUnit === 'eq/L');
  const row = rows.find((candidate) => candidate.percent === percent) ?? rows[0];
  const density =
    numberAt(inputs, /specific_gravity|density|^sg$/i) ?? (row?.percent === percent ? row?.specificGravity : undefined);
  return formula === undefined || row === undefined ? undefined : { row, formula, percent, density };
}

function strengthOf(name: string, inputs: CheckCase['inputs']) {
  const acid = acidNamed(name, inputs);
  if (acid?.density === undefined) throw new Error(`no density for ${name}`);
  const equivalentsPerMol = numberAt(inputs, /^eq_per_mol|equivalents/) ?? acid.row.equivalentsPerMol;
  const strength = given(
    acidStrength({ formula: acid.formula, share: acid.percent / 100, density: acid.density * 1000, equivalentsPerMol }),
  );
  return { strength, equivalentsPerMol, formula: acid.formula };
}

/** Water in m³ and alkalinity to take out in mol/m³, whatever the case's units. */
function volumeOf(inputs: CheckCase['inputs']): number | undefined {
  const gallons = numberAt(inputs, /gal/i);
  const litres = numberAt(inputs, /^(?!.*(mg|meq|mmol|per))(.*_)?(L|litres|liters)$/);
  return gallons !== undefined ? gallons * GALLON : litres !== undefined ? litres / 1000 : numberAt(inputs, /m3/);
}

const unitOf = (key: string): AlkalinityUnit =>
  /HCO3|bicarb/i.test(key) ? 'mg HCO3/L' : /meq/i.test(key) ? 'meq/L' : /dH|german/.test(key) ? 'dH' : 'mg CaCO3/L';

function alkalinityOf(inputs: CheckCase['inputs'], key: RegExp): number | undefined {
  for (const [name, value] of Object.entries(inputs))
    if (key.test(name) && typeof value === 'number') return alkalinityFrom(value, unitOf(name));
  return undefined;
}

function removedOf(inputs: CheckCase['inputs']): number | undefined {
  const drop = alkalinityOf(inputs, /remove|drop|reduce|neutrali[sz]e/i);
  if (drop !== undefined) return drop;
  const start = alkalinityOf(inputs, /^(alk|alkalinity|start|from)/i);
  const [from, to] = [numberAt(inputs, /^(water_)?pH(_start|0)?$/), numberAt(inputs, /target_pH|pH_(end|target)/)];
  const left =
    alkalinityOf(inputs, /^(leave|target_alk|to_|end_|final)/i) ??
    (start !== undefined && from !== undefined && to !== undefined ? alkalinityAtPh(start, from, to) : undefined);
  return start === undefined || left === undefined ? undefined : start - left;
}

const inVolume = (key: string): number =>
  /fl_?oz/.test(key) ? FLUID_OUNCE : /mL/i.test(key) ? 1e-6 : /(^|_)L$/.test(key) ? 1e-3 : Number.NaN;

/** Acid for irrigation water and the lime that water brings. */
export const water: readonly Adapter[] = [
  {
    name: 'acid for water',
    accepts: (check) =>
      textAt(check.inputs, /^acid$/) !== undefined &&
      removedOf(check.inputs) !== undefined &&
      volumeOf(check.inputs) !== undefined,
    compute: (check) => {
      const { strength, equivalentsPerMol, formula } = strengthOf(textAt(check.inputs, /^acid$/) ?? '', check.inputs);
      const removed = removedOf(check.inputs) ?? 0;
      const volume = acidVolume(volumeOf(check.inputs) ?? 0, removed, strength);
      return answers(check, (key) => {
        const element = /^(S|P|N|Cl)_mg_L$/.exec(key)?.[1];
        if (element !== undefined)
          return given(parseFormula(formula)).has(element)
            ? (removed / equivalentsPerMol) * molarMass(new Map([[element, 1]])) * 1000
            : 0;
        return volume / inVolume(key);
      });
    },
  },
  {
    name: 'alkalinity an acid takes out',
    accepts: (check) =>
      textAt(check.inputs, /^acid$/) !== undefined &&
      numberAt(check.inputs, /^(acid_)?(fl_?oz|mL)/i) !== undefined &&
      volumeOf(check.inputs) !== undefined,
    compute: (check) => {
      const { strength } = strengthOf(textAt(check.inputs, /^acid$/) ?? '', check.inputs);
      const [key = '', amount] = Object.entries(check.inputs).find(([name]) => /fl_?oz|mL/i.test(name)) ?? [];
      const removed = (Number(amount) * inVolume(key) * strength) / (volumeOf(check.inputs) ?? Number.NaN);
      return answers(check, (name) => alkalinityIn(removed, unitOf(name)));
    },
  },
  {
    name: 'strength of an acid',
    accepts: (check) =>
      textAt(check.inputs, /^acid$/) !== undefined && expects(check, /^(eq_per_L|eq_L|normality|N|strength)/),
    compute: (check) =>
      answers(check, () => strengthOf(textAt(check.inputs, /^acid$/) ?? '', check.inputs).strength / 1000),
  },
  {
    name: 'alkalinity left at a pH',
    accepts: (check) =>
      numberAt(check.inputs, /target_pH|pH_(end|target)/) !== undefined &&
      expects(check, /left|remain|alk_end|alkalinity/),
    compute: (check) => {
      const left = alkalinityAtPh(
        alkalinityOf(check.inputs, /^alk/i) ?? 1,
        numberAt(check.inputs, /^(water_)?pH(_start|0)?$/) ?? 14,
        numberAt(check.inputs, /target_pH|pH_(end|target)/) ?? 14,
      );
      return answers(check, (key) =>
        /pct|fraction/.test(key) ? left * (/pct/.test(key) ? 100 : 1) : alkalinityIn(left, unitOf(key)),
      );
    },
  },
  {
    name: 'lime that water brings',
    accepts: (check) =>
      alkalinityOf(check.inputs, /^(alk|mg_|HCO3|meq)/i) !== undefined &&
      numberAt(check.inputs, /inch|_in$|^in$|mm|acre_?f|L_(per_)?m2/i) !== undefined &&
      expects(check, /CaCO3/),
    compute: (check) => {
      const { inputs } = check;
      const acreFeet = numberAt(inputs, /acre_?f/i);
      const inches = numberAt(inputs, /inch|_in$|^in$/i);
      const depth =
        acreFeet !== undefined
          ? 0.3048 * acreFeet
          : inches !== undefined
            ? 0.0254 * inches
            : (numberAt(inputs, /mm|L_(per_)?m2/i) ?? 0) / 1000;
      const squareFeet = numberAt(inputs, /sq_?ft|ft2/i);
      const area =
        acreFeet !== undefined
          ? 4046.8564224
          : squareFeet !== undefined
            ? squareFeet * 0.09290304
            : (numberAt(inputs, /(^|_)m2$|area_m2/) ?? 1);
      const kg = waterLoad(alkalinityOf(inputs, /^(alk|mg_|HCO3|meq)/i) ?? 0, depth) * area;
      return answers(check, (key) => kg / (/lb/.test(key) ? 0.45359237 : /(^|_)g(_|$)/.test(key) ? 0.001 : 1));
    },
  },
];

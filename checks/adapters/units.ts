import { carbonFromMatter, matterFromCarbon } from '../../packages/engine/src/evidence/organic-matter.ts';
import { addSalt } from '../../packages/engine/src/evidence/salt-slurry.ts';
import { molarMass, parseFormula } from '../../packages/engine/src/materials/formula.ts';
import { acidityRatio, fromSi, type Kind, soilFromExtract, toSi } from '../../packages/engine/src/units/index.ts';
import type { Adapter, CheckCase } from '../adapter.ts';
import { figures, type KeyUnit, readKey } from './key-unit.ts';
import { type Amount, figureOf } from './unit-change.ts';

type Figures = Readonly<Record<string, unknown>>;

/** An adapter that computes to find out whether it can: it accepts what it has an answer for. */
const adapter = (name: string, work: (check: CheckCase) => Figures | undefined): Adapter => ({
  name,
  accepts: (check) => {
    try {
      return work(check) !== undefined;
    } catch {
      return false;
    }
  },
  compute: (check) => work(check) ?? {},
});

/** Quantities of a case by kind, every one read; undefined when a key is no quantity or a kind stands twice. */
function quantities(inputs: Figures): Map<Kind, { key: KeyUnit; values: readonly number[] }> | undefined {
  const found = new Map<Kind, { key: KeyUnit; values: readonly number[] }>();
  for (const [name, value] of Object.entries(inputs)) {
    if (name === 'material' || name === 'element') continue;
    const key = readKey(name);
    const values = figures(value);
    if (key === undefined || values === undefined) return undefined;
    // The sides of a bed are lengths in a list, its depth is one more length.
    const sides = key.unit.kind === 'length' && values.length > 1;
    const kind = sides ? (values.length === 2 ? 'area' : 'volume') : key.unit.kind;
    if (found.has(kind)) return undefined;
    const size = values.reduce((product, side) => product * toSi(side, key.unit), 1);
    const measured = { ...key, unit: { ...key.unit, kind, factor: 1, offset: 0 } };
    found.set(kind, sides ? { key: measured, values: [size] } : { key, values });
  }
  return found.size === 0 ? undefined : found;
}

/** Figures of the expected keys; `exact` beside a `…_printed` key is the same figure unrounded. */
function answer(expected: Figures, figure: (key: KeyUnit) => unknown): Figures | undefined {
  const ours: Record<string, unknown> = {};
  const printed = Object.keys(expected).find((key) => key.endsWith('_printed'));
  for (const [name, value] of Object.entries(expected)) {
    const key = readKey(name === 'exact' && printed !== undefined ? printed : name);
    if (key === undefined || figures(value) === undefined) return undefined;
    const one = figure(key);
    if (one === undefined) return undefined;
    ours[name] = one;
  }
  return ours;
}

const elementOf = (inputs: Figures): string | undefined =>
  typeof inputs.element === 'string' ? inputs.element : undefined;

/** One quantity, or a list of one kind, told in other units. */
function change({ inputs, expected }: CheckCase): Figures | undefined {
  const element = elementOf(inputs);
  const given = Object.entries(inputs).filter(([name]) => name !== 'element' && name !== 'material');
  const [only, ...more] = given;
  if (only === undefined || more.length > 0) return undefined;
  const key = readKey(only[0]);
  const values = figures(only[1]);
  if (key === undefined || values === undefined) return undefined;
  return answer(expected, (wanted) => {
    const told = values.map((value) => {
      const amount: Amount = { si: toSi(value, key.unit), kind: key.unit.kind, subject: key.subject ?? element };
      return figureOf(
        amount,
        wanted.subject === undefined && element !== undefined ? { ...wanted, subject: element } : wanted,
      );
    });
    if (told.includes(undefined)) return undefined;
    return Array.isArray(only[1]) ? told : told[0];
  });
}

/** What two quantities make: weight = rate × area, volume = area × depth, weight = density × volume, and back. */
const products: readonly (readonly [whole: Kind, a: Kind, b: Kind])[] = [
  ['mass', 'massPerArea', 'area'],
  ['volume', 'area', 'length'],
  ['mass', 'massPerVolume', 'volume'],
  ['massPerArea', 'massPerVolume', 'length'],
];

/** Several quantities of a bed or a heap that together give another. */
function combine({ inputs, expected }: CheckCase): Figures | undefined {
  const given = quantities(inputs);
  if (given === undefined) return undefined;
  const known = new Map<Kind, number>();
  for (const [kind, { key, values }] of given) {
    const [value, ...more] = values;
    if (value === undefined || more.length > 0) return undefined;
    known.set(kind, toSi(value, key.unit));
  }
  if (known.size < 2 && !Object.values(inputs).some(Array.isArray)) return undefined;
  for (let round = 0; round < products.length; round++)
    for (const [whole, a, b] of products) {
      const [w, x, y] = [known.get(whole), known.get(a), known.get(b)];
      if (w === undefined && x !== undefined && y !== undefined) known.set(whole, x * y);
      else if (w !== undefined && x === undefined && y !== undefined) known.set(a, w / y);
      else if (w !== undefined && x !== undefined && y === undefined) known.set(b, w / x);
    }
  return answer(expected, (wanted) => {
    const si = known.get(wanted.unit.kind);
    return si === undefined || given.has(wanted.unit.kind) ? undefined : fromSi(si, wanted.unit);
  });
}

/** Reading of an extract back to the soil: soil, extractant, dilution and reading. */
function extract({ title, inputs, expected }: CheckCase): Figures | undefined {
  const of = (kind: Kind, name: RegExp) => {
    for (const [each, value] of Object.entries(inputs)) {
      const key = name.test(each) ? readKey(each.replace(/^(?:soil|extract(?:ant)?|reading)_/, '')) : undefined;
      if (key?.unit.kind === kind && typeof value === 'number') return toSi(value, key.unit);
    }
    return undefined;
  };
  const soil = of('mass', /^soil_/);
  const volume = of('volume', /^extract(?:ant)?_/);
  // A part per million of an extract is a milligram a litre.
  const reading = of('massPerVolume', /^reading_/) ?? (of('massFraction', /^reading_/) ?? Number.NaN) * 1000;
  const { dilution = 1 } = inputs;
  if (soil === undefined || volume === undefined || Number.isNaN(reading) || typeof dilution !== 'number')
    return undefined;
  // The course notes name the element nowhere but in the heading of the sum.
  const element = elementOf(inputs) ?? /\b(Ca|Mg|K|Na|Al)\b/.exec(title)?.[1];
  const amount: Amount = {
    si: soilFromExtract(reading, volume, soil, dilution),
    kind: 'massFraction',
    subject: element,
  };
  return answer(expected, (wanted) => figureOf(amount, wanted));
}

/** A salt weighed out for a solution, or the strength of a weighed one. */
function reagent({ inputs, expected }: CheckCase): Figures | undefined {
  const formula = inputs.salt ?? inputs.formula ?? inputs.compound;
  const composition = typeof formula === 'string' ? parseFormula(formula) : undefined;
  if (!composition?.ok) return undefined;
  const { salt: _, formula: __, compound: ___, molarity, M = molarity, ...rest } = inputs;
  const given = quantities(rest);
  const volume = given?.get('volume');
  if (volume === undefined) return undefined;
  const litres = toSi(volume.values[0] ?? Number.NaN, volume.key.unit) * 1000;
  const perMol = molarMass(composition.value);
  if (typeof M === 'number')
    return answer(expected, ({ unit }) => (unit.kind === 'mass' ? fromSi(M * litres * perMol, unit) : undefined));
  const mass = given?.get('mass');
  const wanted = Object.keys(expected);
  if (mass === undefined || wanted.length !== 1 || !/^(?:molarity|M)$/.test(wanted[0] ?? '')) return undefined;
  return { [wanted[0] ?? '']: toSi(mass.values[0] ?? Number.NaN, mass.key.unit) / perMol / litres };
}

/** A slurry with as much salt solution again poured in. */
function slurry({ inputs, expected }: CheckCase): Figures | undefined {
  const parts = /^(\d+(?:\.\d+)?):(\d+(?:\.\d+)?)\b/.exec(String(inputs.slurry ?? ''));
  const molar = inputs.add_equal_volume_M;
  if (parts === null || typeof molar !== 'number' || Object.keys(inputs).length !== 2) return undefined;
  const liquid = Number(parts[2]) / Number(parts[1]);
  const after = addSalt(liquid, liquid, molar);
  const ours: Figures = { final_M: after.molar, ratio: `1:${after.liquid}` };
  return Object.keys(expected).every((key) => key in ours) ? ours : undefined;
}

/** Organic carbon to organic matter and back, by the factor each expected key names. */
function organic({ inputs, expected }: CheckCase): Figures | undefined {
  const [[name, percent] = ['', undefined], ...more] = Object.entries(inputs);
  const way = /^(oc|om)_pct$/i.exec(name)?.[1]?.toLowerCase();
  if (way === undefined || more.length > 0 || typeof percent !== 'number') return undefined;
  const ours: Record<string, number> = {};
  for (const key of Object.keys(expected)) {
    const [, to, factor] = /^(oc|om)_(\d+(?:\.\d+)?)$/i.exec(key) ?? [];
    if (factor === undefined || to?.toLowerCase() === way) return undefined;
    const convert = way === 'oc' ? matterFromCarbon : carbonFromMatter;
    ours[key] = convert(percent / 100, Number(factor)) * 100;
  }
  return ours;
}

/** How many times more acid one pH is than another. */
function tenfold({ inputs, expected }: CheckCase): Figures | undefined {
  const { ph_a: a, ph_b: b, ...rest } = inputs;
  const keys = Object.keys(expected);
  if (typeof a !== 'number' || typeof b !== 'number' || Object.keys(rest).length > 0) return undefined;
  return keys.every((key) => key === 'times_more_acidic') ? { times_more_acidic: acidityRatio(a, b) } : undefined;
}

/** Cases of conversion and of the arithmetic of units. */
export const units: Adapter[] = [
  adapter('units: another unit', change),
  adapter('units: rate, area, depth and density', combine),
  adapter('units: extract to soil', extract),
  adapter('units: reagent', reagent),
  adapter('units: slurry with salt', slurry),
  adapter('units: organic carbon and matter', organic),
  adapter('units: tenfold steps of pH', tenfold),
];

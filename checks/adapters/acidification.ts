import { acidifyingLimits } from '@sorrel/almanac/acidifying-limits';
import { acidsForWater, type WaterAcidRow } from '@sorrel/almanac/acids-for-water';
import { sulfurTemperatureFactor } from '../../packages/engine/src/forecast/oxidise.ts';
import { ACID_PER_SULFUR, massPerSulfur, sulfurFor } from '../../packages/engine/src/materials/sulfur-equivalent.ts';
import { acidStrength } from '../../packages/engine/src/materials/water-acid.ts';
import {
  aluminiumSulfatePublished,
  type Sulfate,
  sulfatePublished,
} from '../../packages/engine/src/requirement/lower/index.ts';
import { sulfurForCarbonate } from '../../packages/engine/src/soil/free-lime.ts';
import type { Adapter, CheckCase } from '../adapter.ts';
import { rateKey } from '../rate-key.ts';
import { aluminiumModel, bintang, publishedRate } from './acidification-rates.ts';

const number = (check: CheckCase, key: string): number | undefined => {
  const value = check.inputs[key];
  return typeof value === 'number' ? value : undefined;
};
const has = (check: CheckCase, ...keys: string[]) => keys.every((key) => key in check.inputs);
const wants = (check: CheckCase, ...keys: string[]) => keys.every((key) => key in check.expected);

const stoichiometry: Adapter = {
  name: 'sulfur for carbonate',
  accepts: (check) =>
    (has(check, 'CaCO3_kg') && wants(check, 'S_kg')) || (has(check, 'S_kg') && wants(check, 'CaCO3_kg')),
  compute: (check) => ({
    S_kg: sulfurFor(number(check, 'CaCO3_kg') ?? Number.NaN),
    CaCO3_kg: (number(check, 'S_kg') ?? Number.NaN) * ACID_PER_SULFUR,
  }),
};

const freeLime: Adapter = {
  name: 'sulfur for free lime',
  accepts: (check) =>
    has(check, 'CaCO3_pct') && soilMass(check) !== undefined && Object.keys(check.expected).some((key) => rateKey(key)),
  compute(check) {
    const sulfur = sulfurForCarbonate((number(check, 'CaCO3_pct') ?? 0) / 100, soilMass(check) as number);
    return Object.fromEntries(
      Object.keys(check.expected).map((key) => [key, sulfur / (rateKey(key)?.factor ?? Number.NaN)]),
    );
  },
};

function soilMass(check: CheckCase): number | undefined {
  const slice = number(check, 'furrow_slice_lb_per_acre');
  if (slice !== undefined) return slice * (rateKey('lb_per_acre')?.factor ?? Number.NaN);
  const [depth, density] = [number(check, 'depth_cm'), number(check, 'bulk_density') ?? number(check, 'BD_g_cm3')];
  return depth === undefined || density === undefined ? undefined : (depth / 100) * density * 1000;
}

const temperature: Adapter = {
  name: 'sulfur oxidation with temperature',
  accepts: (check) => has(check, 'Ea_kJ_mol', 'T1', 'T2') && wants(check, 'ratio'),
  compute(check) {
    const [t1, t2, ea] = [number(check, 'T1') ?? 0, number(check, 'T2') ?? 0, number(check, 'Ea_kJ_mol') ?? 85];
    // Our law holds 85 kJ/mol; in an Arrhenius law the logarithm of the ratio grows with the energy.
    return { ratio: (sulfurTemperatureFactor(t2) / sulfurTemperatureFactor(t1)) ** (ea / 85) };
  },
};

/** `HCl 32%` or `H2SO4 93%` as a row of the almanac. */
function acidNamed(text: unknown): WaterAcidRow | undefined {
  const [formula, percent] = String(text).split(/\s+/);
  return acidsForWater.find((row) => row.formula === formula && `${row.percent}%` === percent);
}

function strengthOf(row: WaterAcidRow): number {
  if (row.specificGravity === undefined) throw new Error(`${row.name} is no liquid`);
  const strength = acidStrength({
    formula: row.formula,
    share: row.percent / 100,
    density: row.specificGravity * 1000,
    equivalentsPerMol: row.equivalentsPerMol,
  });
  if (!strength.ok) throw new Error(strength.problems[0]?.message);
  return strength.value;
}

const acidRatio: Adapter = {
  name: 'volume of one acid for another',
  accepts: (check) =>
    acidNamed(check.inputs.a) !== undefined && acidNamed(check.inputs.b) !== undefined && wants(check, 'ratio'),
  compute(check) {
    const [a, b] = [acidNamed(check.inputs.a), acidNamed(check.inputs.b)] as [WaterAcidRow, WaterAcidRow];
    return { ratio: strengthOf(b) / strengthOf(a) };
  },
};

const acidLimit: Adapter = {
  name: 'most acid in irrigation water',
  accepts: (check) => acidNamed(check.inputs.acid) !== undefined && wants(check, 'max_fl_oz_per_100_gal'),
  compute(check) {
    const acid = acidNamed(check.inputs.acid) as WaterAcidRow;
    const limit = acidifyingLimits.find(
      (row) =>
        row.unit === 'fl oz/100 gal' && acid.name.startsWith(row.material) && row.key.includes(`${acid.percent}`),
    );
    return { max_fl_oz_per_100_gal: limit?.value };
  },
};

const multiple: Adapter = {
  name: 'sulfate in place of sulfur',
  accepts: (check) => typeof check.inputs.material === 'string' && wants(check, 'x_sulfur'),
  compute(check) {
    const material = check.inputs.material as string;
    const byFormula = massPerSulfur(material);
    if (byFormula.ok) return { x_sulfur: byFormula.value };
    const name = material
      .replace(/\s*\(.*\)/, '')
      .replace('aluminum', 'aluminium')
      .replace('ferrous', 'iron');
    const printed = sulfatePublished(name as Sulfate, check.source)[0] ?? sulfatePublished(name as Sulfate)[0];
    return { x_sulfur: printed?.value };
  },
};

const aluminiumCell: Adapter = {
  name: 'aluminium sulfate table',
  accepts(check) {
    const keys = Object.keys(check.expected).map(rateKey);
    const [from, to] = [number(check, 'pH'), number(check, 'target')];
    if (from === undefined || to === undefined || keys.length === 0) return false;
    const aluminium = keys.every((key) => key !== undefined && !key.sulfur);
    return aluminium && aluminiumSulfatePublished(check.source, from, to) !== undefined;
  },
  compute(check) {
    const [from, to] = [number(check, 'pH') ?? 0, number(check, 'target') ?? 0];
    const figures: Record<string, number> = {};
    for (const key of Object.keys(check.expected)) {
      const factor = rateKey(key)?.factor ?? Number.NaN;
      figures[key] = (aluminiumSulfatePublished(check.source, from, to) ?? Number.NaN) / factor;
      figures[`${key}_model`] = aluminiumModel(from, to) / factor;
    }
    return figures;
  },
};

export const acidification: Adapter[] = [
  stoichiometry,
  freeLime,
  temperature,
  acidRatio,
  acidLimit,
  multiple,
  aluminiumCell,
  bintang,
  publishedRate,
];

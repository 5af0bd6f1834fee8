import { acidificationParameter } from '@sorrel/almanac/acidification-parameters';
import type { TextureClass } from '../../packages/engine/src/evidence/soil-test.ts';
import { ACID_PER_SULFUR, massPerSulfur, sulfurFor } from '../../packages/engine/src/materials/sulfur-equivalent.ts';
import { SULFUR_CAPS, SULFUR_RULES, type SulfurRule } from '../../packages/engine/src/plan/split.ts';
import { byTexture, capacityAsCarbonate, sulfurPublished } from '../../packages/engine/src/requirement/lower/index.ts';
import { columnFor, rateTable } from '../../packages/engine/src/requirement/lower/rate-table.ts';
import { forward, leastCapacityThrough, solidCurve } from '../../packages/engine/src/soil/buffer-curve.ts';
import type { Adapter, CheckCase } from '../adapter.ts';
import { rateKey, rateUnitFactor } from '../rate-key.ts';

const number = (check: CheckCase, key: string): number | undefined => {
  const value = check.inputs[key];
  return typeof value === 'number' ? value : undefined;
};

/** Soil mass the acidification note compares tables on: 1.3 g/cm³ over the stated depth, else 15.24 cm. */
function tableMass(check: CheckCase): number {
  const inches = number(check, 'depth_in');
  const cm = number(check, 'depth_cm') ?? (inches === undefined ? 15.24 : inches * 2.54);
  return cm * 13;
}

/** Our own sulfur for a fall of pH on soil of those textures without free lime, kg/m²; the middle of several classes. */
export function sulfurModel(textures: readonly string[], from: number, to: number, mass: number): number {
  const each = textures.map((texture) => {
    const outcome = byTexture.read({
      present: { mean: from, sd: 0.1 },
      targetPh: to,
      layer: { depth: 0.1524, bulkDensity: 1300, coarseFragments: 0, mass },
      medium: 'mineral',
      test: {
        id: 'published case',
        date: '2000-01-01',
        instrument: 'laboratory',
        depth: 0.1524,
        texture: texture as TextureClass,
        carbonate: 0,
      },
    });
    return outcome.state === 'reading' ? sulfurFor(-outcome.reading.pure) : Number.NaN;
  });
  return Math.exp(each.reduce((sum, sulfur) => sum + Math.log(sulfur), 0) / each.length);
}

/** The same as 18-water aluminium sulfate on loam. */
export function aluminiumModel(from: number, to: number): number {
  const perSulfur = massPerSulfur('Al2(SO4)3.18H2O');
  return sulfurModel(['loam'], from, to, 15.24 * 13) * (perSulfur.ok ? perSulfur.value : Number.NaN);
}

const publicationOf = (check: CheckCase): string | undefined =>
  check.source.split(/[;,\s]+/).find((key) => rateTable(key).length > 0);

const TEXTURES = ['sand', 'sandy loam', 'loam', 'clay loam', 'clay', 'organic'];
/** Heavy soil by another name. */
const headingOf = (texture: string): string =>
  /om\s*>\s*2|heavy/i.test(texture) ? 'heavy or OM>2%' : texture.toLowerCase();

/** From and to: as given; or a fall from the first printed pH; or down to the lowest pH of the table. */
function stretch(check: CheckCase, publication: string): { from: number; to: number } | undefined {
  const rows = rateTable(publication).flatMap((column) => column.rows);
  const [first] = rows;
  const drop = number(check, 'delta_pH');
  if (first === undefined) return undefined;
  if (drop !== undefined) return { from: first.phFrom, to: first.phFrom - drop };
  const from = number(check, 'pH') ?? number(check, 'initial_pH');
  const to = number(check, 'target') ?? number(check, 'target_pH') ?? Math.min(...rows.map((row) => row.phTo));
  return from === undefined ? undefined : { from, to };
}

/** Sulfur rates as a publication prints them, with our own figure beside each. */
export const publishedRate: Adapter = {
  name: 'published sulfur rate',
  accepts(check) {
    const publication = publicationOf(check);
    if (publication === undefined || stretch(check, publication) === undefined) return false;
    const keys = Object.keys(check.expected);
    return keys.some((key) => rateKey(key)?.sulfur === true) || (keys.includes('unit') && keys.some(isTexture));
  },
  compute(check) {
    const publication = publicationOf(check) as string;
    const { from, to } = stretch(check, publication) as { from: number; to: number };
    const figures: Record<string, unknown> = {};
    let unit = rateUnitFactor(String(check.expected.unit ?? ''));
    const add = (key: string, texture: string | undefined, factor: number, end: 'low' | 'high' | undefined) => {
      const printed = sulfurPublished(publication, texture, from, to);
      if (printed !== undefined) figures[key] = printed[end ?? 'low'] / factor;
      const classes = columnFor(rateTable(publication), texture)?.classes ?? [];
      if (classes.length > 0) figures[`${key}_model`] = sulfurModel(classes, from, to, tableMass(check)) / factor;
    };
    const texture = typeof check.inputs.texture === 'string' ? headingOf(check.inputs.texture) : undefined;
    for (const key of Object.keys(check.expected)) {
      const read = rateKey(key);
      if (key === 'unit') figures.unit = check.expected.unit;
      else if (key.startsWith('yearly_cap_')) figures[key] = yearlyCap(check, key);
      else if (read !== undefined) {
        unit = read.factor;
        add(key, texture, read.factor, read.end);
      } else if (isTexture(key) && unit !== undefined) add(key, key.replace(/_/g, ' '), unit, undefined);
      else if ((key === 'low' || key === 'high') && unit !== undefined) add(key, texture, unit, key);
    }
    return figures;
  },
};

const isTexture = (key: string): boolean => TEXTURES.includes(key.replace(/_/g, ' '));

function yearlyCap(check: CheckCase, key: string): number | undefined {
  const rule = (Object.keys(SULFUR_RULES) as SulfurRule[]).find((one) =>
    (SULFUR_RULES[one].sources as readonly string[]).includes(check.source),
  );
  if (rule === undefined || rule === 'two thirds first') return undefined;
  const cap = SULFUR_CAPS[rule].perYear ?? SULFUR_CAPS[rule].cap;
  return cap / (rateKey(key.replace('yearly_cap_', ''))?.factor ?? Number.NaN);
}

/** The soil of the Malaysian pot trials: its mean capacity over pH 7.0 to 5.4, as a curve. */
function bintangCurve() {
  const beta = acidificationParameter('beta of the Bintang soil').value / 1000;
  return solidCurve(leastCapacityThrough(-capacityAsCarbonate(beta) * (7.0 - 5.4), 7.0, 5.4), 0.2);
}

/** pH after sulfur mixed into soil and wholly oxidised, by the buffer curve of that soil. */
export const bintang: Adapter = {
  name: 'pH after sulfur in a pot',
  accepts: (check) =>
    number(check, 'S_g_per_kg') !== undefined &&
    number(check, 'pH0') !== undefined &&
    'pH' in check.expected &&
    /\bKAR1[79]\b/.test(check.source),
  compute(check) {
    const [sulfur, start] = [number(check, 'S_g_per_kg') ?? 0, number(check, 'pH0') ?? 0];
    const ph = forward(bintangCurve(), start, -sulfur * 1e-3 * ACID_PER_SULFUR);
    return { pH: ph, slope: (ph - start) / sulfur };
  },
};

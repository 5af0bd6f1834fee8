import { type MaterialRow, materialOf, materials } from '@sorrel/almanac/materials';
import type { Recorder } from '../derivation/derivation.ts';
import { fail, ok, type Result } from '../derivation/problem.ts';
import { nearest } from '../units/nearest.ts';
import type { Fraction } from '../units/si.ts';
import { currencyPerKg } from './currency.ts';
import { efficiencyOfShares, efficiencyOfSieves } from './fineness/efficiency.ts';
import { type LabelFigures, labelProblems } from './label.ts';
import type { Product } from './material.ts';

/** Fineness rule of gardens when the person follows no state: 8/20/60 mesh, three-year base (BCLIME). */
export const DEFAULT_FINENESS_SYSTEM = 'OH';

/** One spelling for names that differ only in case, separators or between British and American English. */
const plain = (name: string): string =>
  name
    .trim()
    .toLowerCase()
    .replace(/[\s_-]+/g, ' ')
    .replaceAll('sulph', 'sulf')
    .replaceAll('aluminium', 'aluminum')
    .replaceAll('pelletised', 'pelletized');

/** Every name a material answers to, plainly spelled, with its row. */
const byName = new Map<string, MaterialRow>();
for (const row of materials)
  for (const name of [row.key, row.name, ...row.alsoCalled]) if (!byName.has(plain(name))) byName.set(plain(name), row);

/** The material a person means by a key, a name or a common other name. */
export function findMaterial(name: string): Result<MaterialRow> {
  const row = materialOf(name) ?? byName.get(plain(name));
  if (row !== undefined) return ok(row);
  const near = nearest(plain(name), byName.keys());
  const meant = near === undefined ? undefined : byName.get(near);
  return fail({
    code: 'materials.unknown',
    field: 'material',
    value: name,
    message: `No material is called "${name}".`,
    fix:
      meant === undefined
        ? 'Choose one from the list, for example calcitic-limestone, dolomitic-limestone or sulfur-powder.'
        : `Did you mean ${meant.key} (${meant.name})?`,
  });
}

/**
 * A product: an almanac material with what its own label says. Label figures win over the almanac's usual ones.
 *
 * @param material almanac key or a common name
 * @param label figures in SI; mass fractions, sieves in m
 * @param finenessSystem published rule for the sieve figures
 * @returns the product, or problems naming field, value and fix
 */
export function productFrom(
  material: string,
  label: LabelFigures = {},
  finenessSystem = DEFAULT_FINENESS_SYSTEM,
  recorder?: Recorder,
): Result<Product> {
  const found = findMaterial(material);
  if (!found.ok) return found;
  const row = found.value;
  const problems = labelProblems(row, label);
  if (problems.length > 0) return fail(...problems);
  const fineness = finenessOf(row, label, finenessSystem, recorder);
  if (!fineness.ok) return fineness;
  const density = label.density ?? (row.densityTypical === undefined ? undefined : row.densityTypical * 1000);
  return ok({
    material: row.key,
    name: label.name ?? row.name,
    role: row.role,
    form: row.form,
    currency: currencyPerKg(row, label, recorder),
    currencyBasis: labelled(row, label) === undefined ? 'assumed' : 'label',
    moisture: label.moisture ?? row.moisture,
    ...fineness.value,
    ...(label.sieves === undefined ? {} : { sieves: label.sieves }),
    calcium: label.calcium ?? row.calcium,
    magnesium: label.magnesium ?? row.magnesium,
    ...(density === undefined ? {} : { density }),
    cautions: row.cautions,
    ...(label.bag === undefined ? {} : { bag: label.bag }),
    ...(label.onHand === undefined ? {} : { onHand: label.onHand }),
    ...(row.refused === undefined ? {} : { refused: row.refused }),
  });
}

/**
 * The almanac's usual product of a material, nothing entered.
 *
 * @throws RangeError for a key the almanac does not know
 */
export function defaultProduct(key: string): Product {
  const product = productFrom(key);
  if (!product.ok) throw new RangeError(product.problems[0]?.message ?? key);
  return product.value;
}

/** The label figure that settles what the product does; purity alone does not tell which hydrate a sulfate is. */
function labelled(row: MaterialRow, label: LabelFigures): Fraction | undefined {
  if (row.role !== 'acidifying') return label.neutralisingValue;
  if (row.iron !== undefined) return label.iron;
  return row.aluminium !== undefined ? label.aluminium : label.purity;
}

interface Efficiency {
  readonly efficiency: Fraction;
  readonly efficiencyBasis: Product['efficiencyBasis'];
}

function finenessOf(row: MaterialRow, label: LabelFigures, system: string, recorder?: Recorder): Result<Efficiency> {
  if (row.efficiency === undefined) return ok({ efficiency: 1, efficiencyBasis: 'not applicable' });
  if (label.efficiency !== undefined) return ok({ efficiency: label.efficiency, efficiencyBasis: 'label' });
  const read =
    label.sieves !== undefined && label.sieves.length > 0
      ? efficiencyOfSieves(system, label.sieves, recorder)
      : label.sizes !== undefined && label.sizes.length > 0
        ? efficiencyOfShares(system, label.sizes, recorder)
        : undefined;
  if (read !== undefined) return read.ok ? ok({ efficiency: read.value.efficiency, efficiencyBasis: 'sieves' }) : read;
  if (recorder)
    recorder.step({
      symbol: 'FE',
      title: 'Fineness efficiency, assumed because the label gives no sieves',
      formula: 'FE = usual figure of the material',
      terms: [],
      value: row.efficiency,
      unit: '',
      sources: ['SORREL'],
      basis: 'judgement',
    });
  return ok({ efficiency: row.efficiency, efficiencyBasis: 'assumed' });
}

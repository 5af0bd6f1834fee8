import type { Problem } from '../derivation/problem.ts';
import { openingOf } from '../materials/fineness/screen.ts';
import type { LabelFigures } from '../materials/label.ts';
import type { Product, Sieve } from '../materials/material.ts';
import { productFrom } from '../materials/product.ts';
import { type Report, readFields } from './fields.ts';
import { limits } from './limits.ts';
import { measure } from './measure.ts';
import { type Path, pathText } from './path.ts';
import { problem } from './report.ts';
import { type MaterialEntry, material as materialSchema } from './schema.ts';

/** A material the gardener has or can buy, with what its label says; `undefined` with the reasons in the report. */
export function readMaterial(typed: unknown, at: Path, finenessSystem: string, report: Report): Product | undefined {
  const { fields, bad } = readFields(materialSchema.shape, typed, at, report);
  if (bad.size > 0 || fields.material === undefined) return undefined;
  const before = report.problems.length;
  const label = labelOf(fields, at, report);
  if (report.problems.length > before) return undefined;
  return built(fields.material, label, finenessSystem, at, report);
}

/**
 * A material by the name the gardener gave one of his own, or by any name of the almanac.
 *
 * @param at path of the field that names it
 */
export function productNamed(
  name: string,
  own: readonly Product[],
  finenessSystem: string,
  at: Path,
  report: Report,
): Product | undefined {
  const wanted = name.trim().toLowerCase();
  const mine = own.find((product) => product.name.toLowerCase() === wanted || product.material === wanted);
  return mine ?? built(name, {}, finenessSystem, at.slice(0, -1), report, String(at.at(-1) ?? 'material'));
}

/** Names of a product's figures where the document has a shorter word. */
const WRITTEN: Readonly<Record<string, string>> = {
  neutralisingValue: 'cce',
  'bag.mass': 'bag.size',
  sieves: 'passing',
};

function built(
  name: string,
  label: LabelFigures,
  finenessSystem: string,
  at: Path,
  report: Report,
  nameField = 'material',
): Product | undefined {
  const product = productFrom(name, label, finenessSystem);
  if (product.ok) return product.value;
  for (const each of product.problems) {
    const field = each.field === 'material' ? nameField : (WRITTEN[each.field] ?? each.field);
    const moved: Problem = { ...each, field: pathText([...at, field]) };
    report.problems.push(report.place === undefined ? moved : { ...moved, place: report.place });
  }
  return undefined;
}

function labelOf(entry: Partial<MaterialEntry>, at: Path, report: Report): LabelFigures {
  const share = (name: keyof MaterialEntry & string, limit = limits.share) =>
    measure(entry[name] as string | undefined, 'massFraction', limit, [...at, name], report);
  const aluminium = entry.aluminium === undefined ? 'aluminum' : 'aluminium';
  const figures: Record<string, unknown> = {
    name: entry.name,
    neutralisingValue: share('cce', limits.cce),
    moisture: share('moisture'),
    efficiency: share('efficiency'),
    purity: share('purity'),
    iron: share('iron'),
    aluminium: share(aluminium),
    calcium: share('calcium'),
    magnesium: share('magnesium'),
    density: measure(entry.density, 'massPerVolume', limits.density, [...at, 'density'], report),
    onHand: measure(entry.onHand, 'mass', limits.onHand, [...at, 'onHand'], report),
    sieves: entry.passing === undefined ? undefined : sievesOf(entry.passing, [...at, 'passing'], report),
    bag: entry.bag === undefined ? undefined : bagOf(entry.bag, [...at, 'bag'], report),
  };
  return Object.fromEntries(Object.entries(figures).filter(([, value]) => value !== undefined));
}

function sievesOf(passing: Readonly<Record<string, string>>, at: Path, report: Report): Sieve[] {
  return Object.entries(passing).flatMap(([screen, share]) => {
    const opening = openingOf(screen);
    if (opening === undefined) {
      const where = { place: report.place, field: pathText([...at, screen]) };
      report.problems.push(problem('document.unknown-screen', where, screen));
      return [];
    }
    const passes = measure(share, 'massFraction', limits.share, [...at, screen], report);
    return passes === undefined ? [] : [{ opening, passing: passes }];
  });
}

function bagOf(bag: NonNullable<MaterialEntry['bag']>, at: Path, report: Report): LabelFigures['bag'] {
  const mass = measure(bag.size, 'mass', limits.mass, [...at, 'size'], report);
  if (mass === undefined) return undefined;
  return bag.price === undefined ? { mass } : { mass, price: bag.price };
}

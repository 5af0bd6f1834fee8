import { cropBaseOf } from '@sorrel/almanac/acid-rates';
import { materialOf } from '@sorrel/almanac/materials';
import type { YearlyInputs } from '../forecast/types.ts';
import type { Product } from '../materials/material.ts';
import type { Place } from '../plan/place.ts';
import type { KgPerM2 } from '../units/si.ts';
import type { Choices } from './choices.ts';
import { type Report, readFields, readList } from './fields.ts';
import { limits } from './limits.ts';
import { measureAny } from './measure.ts';
import { type Path, pathText } from './path.ts';
import { type Nitrogen, readFeed } from './read-feed.ts';
import { productNamed } from './read-material.ts';
import { problem, sentence } from './report.ts';
import { compost as compostSchema, crop as cropSchema } from './schema.ts';

/** The lists of a place that hold what happens every year. */
export const yearlyLists = ['feeds', 'harvest', 'compost'] as const;

export interface YearlyDefaults {
  readonly products: readonly Product[];
  readonly finenessSystem: string;
}

/**
 * What pushes the pH of a place every year besides applications and water: feeds, crops carried away, compost. A wrong
 * entry is left out and said to be.
 */
export function readYearly(
  given: Readonly<Record<string, unknown>>,
  at: Path,
  place: Pick<Place, 'area' | 'name'>,
  defaults: YearlyDefaults,
  report: Report,
  choices: Choices,
  skipped: string[],
): YearlyInputs {
  const all = <T>(list: (typeof yearlyLists)[number], each: (typed: unknown, at: Path) => T | undefined): T[] =>
    readList(given[list], [...at, list], report).flatMap((typed, index) => {
      const value = each(typed, [...at, list, index]);
      if (value === undefined) skipped.push(sentence('document.yearly-left-out', { place: place.name, list }));
      return value === undefined ? [] : [value];
    });
  const feeds = all('feeds', (typed, path) => readFeed(typed, path, place, defaults.products, report, choices));
  const crops = all('harvest', (typed, path) => readCrop(typed, path, place, report));
  const composts = all('compost', (typed, path) => readCompost(typed, path, place, defaults, report));
  say(crops, 'harvest', choices);
  say(composts, 'compost', choices);
  const nitrogen = together([...feeds, ...composts.flatMap((each) => each.nitrogen ?? [])]);
  return {
    ...(nitrogen === undefined ? {} : { nitrogen }),
    ...(crops.length === 0 ? {} : { crop: sum(crops.map((each) => each.base)) }),
    ...(composts.length === 0 ? {} : { compost: sum(composts.map((each) => each.base)) }),
  };
}

/** Says what the figures of a list come to and where they are from. */
function say(list: readonly Based[], field: 'harvest' | 'compost', choices: Choices): void {
  const base = sum(list.map((each) => each.base));
  if (base === 0 || list.every((each) => each.row === undefined)) return;
  choices.add(field, `document.choice-${field}`, {
    base: { value: base, dimension: 'massPerArea' },
    sources: [...new Set(list.flatMap((each) => each.row?.sources ?? []))].join(', '),
    basis: list.some((each) => each.row?.basis === 'memory') ? 'from memory and weak' : 'published',
  });
}

/** Base that something brings or carries away, kg CaCO3/m² a year, and the row it rests on. */
interface Based {
  readonly base: KgPerM2;
  readonly row?: { readonly sources: readonly string[]; readonly basis: string };
}

const sum = (list: readonly number[]): number => list.reduce((total, each) => total + each, 0);

/** Several feeds as one: the nitrogen adds up, and the charge is its mean by nitrogen, so that the acid adds up too. */
export function together(feeds: readonly Nitrogen[]): Nitrogen | undefined {
  const amount = sum(feeds.map((feed) => feed.amount));
  if (amount === 0) return undefined;
  return { amount, charge: sum(feeds.map((feed) => feed.amount * feed.charge)) / amount };
}

/** Base that a crop carries away; none when what is left of it comes back as compost. */
function readCrop(typed: unknown, at: Path, place: Pick<Place, 'area'>, report: Report): Based | undefined {
  const { fields, bad } = readFields(cropSchema.shape, typed, at, report);
  if (bad.size > 0 || fields.of === undefined) return undefined;
  const given = measureAny(fields.weight, ['massPerArea', 'mass'], limits.harvest, [...at, 'weight'], report);
  if (given === undefined) return undefined;
  if (fields.returned === true || fields.returned === 'yes') return { base: 0 };
  const row = cropBaseOf(fields.of);
  if (row === undefined) throw new RangeError(`no base content of ${fields.of}`);
  return { base: row.base * (given.dimension === 'mass' ? given.value / place.area : given.value), row };
}

interface Compost extends Based {
  readonly nitrogen?: Nitrogen;
}

/** Lime and nitrogen that compost or manure brings in a year. Its nitrogen counts as organic (CALC). */
function readCompost(
  typed: unknown,
  at: Path,
  place: Pick<Place, 'area'>,
  defaults: YearlyDefaults,
  report: Report,
): Compost | undefined {
  const { fields, bad } = readFields(compostSchema.shape, typed, at, report);
  const { material, amount } = fields;
  if (bad.size > 0 || material === undefined) return undefined;
  const kinds = ['massPerArea', 'mass', 'volume', 'length'] as const;
  const given = measureAny(amount, kinds, limits.compost, [...at, 'amount'], report);
  const path = [...at, 'material'];
  const product = productNamed(material, defaults.products, defaults.finenessSystem, path, report);
  if (given === undefined || product === undefined) return undefined;
  if (product.role !== 'organic') {
    report.problems.push(problem('document.not-compost', { place: report.place, field: pathText(path) }, material));
    return undefined;
  }
  const depth =
    given.dimension === 'volume' ? given.value / place.area : given.dimension === 'length' ? given.value : undefined;
  const perArea =
    depth !== undefined
      ? depth * (product.density ?? 600)
      : given.dimension === 'mass'
        ? given.value / place.area
        : given.value;
  if (perArea > limits.compost.most) {
    const where = { place: report.place, field: pathText([...at, 'amount']) };
    report.problems.push(problem('document.too-large', where, amount, { high: limits.compost.mostText }));
    return undefined;
  }
  const row = materialOf(product.material);
  const base = perArea * product.currency;
  const based: Based = product.currencyBasis === 'assumed' && row !== undefined ? { base, row } : { base };
  const nitrogen = row?.nitrogen ?? 0;
  return nitrogen > 0
    ? { ...based, nitrogen: { amount: perArea * (1 - product.moisture) * nitrogen, charge: 0 } }
    : based;
}

import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { sampleCorrelation } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { usability } from '../packages/engine/src/nutrients/availability.ts';
import { nutrientOf } from '../packages/engine/src/nutrients/nutrient.ts';
import { readDataFrame } from './field/read-rda.ts';

/**
 * `varechem`: humus of 24 lichen pastures in Finland, pH 2.7 to 3.6, extractable elements (Väre, Ohtonen and Oksanen,
 * Journal of Vegetation Science 6:523-530, 1995), as shipped with the R package vegan (GPL-2). It is read where it lies
 * and not copied into the repository: install r-cran-vegan, or run `npm run field-data` on a Debian system.
 */
const places = [
  process.env.SORREL_VARECHEM ?? '',
  '/usr/lib/R/site-library/vegan/data/varechem.rda',
  fileURLToPath(new URL('../.cache/varechem.rda', import.meta.url)),
];
const file = places.find((path) => path !== '' && existsSync(path));
const title =
  file === undefined
    ? 'field data varechem (skipped: not here; run `npm run field-data` on a Debian system)'
    : 'field data varechem';

/** Rank correlation that 24 sites exceed by chance once in twenty (tables of Spearman's rho, n = 24). */
const BY_CHANCE = 0.407;

/** Ranks from the least up; equal values share the middle of theirs. */
const ranks = (values: readonly number[]): number[] =>
  values.map((value) => {
    const below = values.filter((other) => other < value).length;
    return below + (values.filter((other) => other === value).length + 1) / 2;
  });

describe.skipIf(file === undefined)(title, () => {
  const data = file === undefined ? new Map<string, readonly number[]>() : readDataFrame(readFileSync(file));
  const column = (name: string): number[] => [...(data.get(name) ?? [])];
  const between = (a: string, b: string): number => sampleCorrelation(ranks(column(a)), ranks(column(b)));
  const link = (name: string): number => between('pH', name);
  /** The link that is left among sites of like humus depth. */
  const linkAtSameDepth = (name: string): number => {
    const [ab, ac, bc] = [link(name), link('Humdepth'), between(name, 'Humdepth')];
    return (ab - ac * bc) / Math.sqrt((1 - ac ** 2) * (1 - bc ** 2));
  };

  it('is read whole: 24 sites, 14 columns, pH 2.7 to 3.6', () => {
    expect(data.size).toBe(14);
    expect([column('pH').length, Math.min(...column('pH')), Math.max(...column('pH'))]).toEqual([24, 2.7, 3.6]);
  });

  it('shows manganese fall as pH rises, as our lines do', () => {
    expect(link('Mn')).toBeLessThan(-BY_CHANCE);
    const ours = (ph: number) => usability('Mn', ph, 'organic').relative;
    expect(ours(7)).toBeLessThan(ours(5));
  });

  it('shows no link beyond chance for the other nutrients, so it neither backs nor doubts their lines', () => {
    for (const name of ['N', 'P', 'K', 'Ca', 'Mg', 'S', 'Zn', 'Mo']) {
      expect(nutrientOf(name)).toBe(name);
      expect(Math.abs(link(name)), name).toBeLessThan(BY_CHANCE);
    }
  });

  it('goes against free-ion chemistry for aluminium and iron, which is the depth of the humus and not the pH', () => {
    for (const name of ['Al', 'Fe']) {
      expect(link(name), name).toBeGreaterThan(BY_CHANCE);
      expect(Math.abs(linkAtSameDepth(name)), name).toBeLessThan(BY_CHANCE);
    }
    expect(link('Humdepth')).toBeLessThan(-0.7);
  });

  it('cannot decide more: at like humus depth no element moves with pH beyond chance', () => {
    for (const name of ['N', 'P', 'K', 'Ca', 'Mg', 'S', 'Al', 'Fe', 'Mn', 'Zn', 'Mo'])
      expect(Math.abs(linkAtSameDepth(name)), name).toBeLessThan(BY_CHANCE);
  });
});

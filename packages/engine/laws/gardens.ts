import fc from 'fast-check';
import type { BufferMethod, SoilTest, TextureClass } from '../src/evidence/soil-test.ts';
import { defaultProduct } from '../src/materials/product.ts';
import type { Place, PlantRange, Settings } from '../src/plan/place.ts';
import { textureOf } from '../src/soil/texture-of.ts';

/** Arbitrary places, tests and settings for the laws. All figures lie where a real garden's could. */
export const settings: Settings = {
  today: '2026-10-12',
  overshootChance: 0.05,
  hemisphere: 'north',
  finenessSystem: 'OH',
};

const double = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });

export const textures: readonly TextureClass[] = [
  'sand',
  'loamy sand',
  'sandy loam',
  'loam',
  'silt loam',
  'silt',
  'sandy clay loam',
  'clay loam',
  'silty clay loam',
  'sandy clay',
  'silty clay',
  'clay',
];

const buffers: Readonly<Record<string, readonly [BufferMethod, number, number]>> = {
  smp: ['smp', 5.2, 6.9],
  sikora: ['sikora', 5.2, 6.9],
  adams: ['adams-evans', 7.3, 7.9],
  mehlich: ['mehlich', 5.4, 6.4],
};

const bufferReading = fc
  .constantFrom(...Object.values(buffers))
  .chain(([method, low, high]) => double(low, high).map((value) => ({ method, value })));

/** A laboratory test with a pH and, often, more. */
export const laboratoryTest = (ph: fc.Arbitrary<number>): fc.Arbitrary<SoilTest> =>
  fc
    .record({
      ph,
      buffer: fc.option(bufferReading, { nil: undefined }),
      cec: fc.option(double(0.03, 0.3), { nil: undefined }),
      organicMatter: fc.option(double(0.005, 0.09), { nil: undefined }),
      magnesium: fc.option(double(0.001, 0.03), { nil: undefined }),
    })
    .map(({ ph, buffer, cec, organicMatter, magnesium }) => ({
      id: 't1',
      date: '2026-09-20',
      instrument: 'laboratory' as const,
      depth: 0.15,
      cores: 12,
      ph: { value: ph, method: 'water-1:1' as const },
      acidFizz: 'none' as const,
      ...(buffer === undefined ? {} : { buffer }),
      ...(cec === undefined ? {} : { cec, cecBasis: 'pH 7' as const }),
      ...(organicMatter === undefined ? {} : { organicMatter }),
      ...(magnesium === undefined ? {} : { magnesium }),
    }));

export const plant = (low: number, high: number): PlantRange => ({
  key: 'anything',
  name: 'Anything',
  low,
  high,
  toleratesLow: low - 0.3,
  toleratesHigh: high + 0.3,
  aim: (low + high) / 2,
  reaction: 'neutral',
  sources: ['SORREL'],
  basis: 'judgement',
});

/** A bed or plot of mineral ground with one laboratory test. */
export const ground = (ph: fc.Arbitrary<number> = double(3.8, 8.2)): fc.Arbitrary<Place> =>
  fc
    .record({
      test: laboratoryTest(ph),
      texture: fc.constantFrom(...textures),
      area: double(0.5, 200),
      depth: double(0.08, 0.3),
      stones: double(0, 0.4),
      situation: fc.constantFrom('open ground' as const, 'around plants' as const, 'lawn' as const),
      low: double(4.5, 6.8),
      width: double(0.4, 1.5),
    })
    .map(({ test, texture, area, depth, stones, situation, low, width }) => {
      const known = textureOf({ texture });
      return {
        id: 'p',
        name: 'Bed',
        kind: 'bed' as const,
        situation,
        medium: 'mineral' as const,
        area,
        depth,
        coarseFragments: stones,
        plants: [],
        target: { low, high: low + width },
        tests: [test],
        applications: [],
        ...(known === undefined ? {} : { texture: known }),
      };
    });

export const sourGround = ground(double(4.2, 5.4));

export const lime = defaultProduct('calcitic-limestone');
export const sulfur = defaultProduct('sulfur-powder');

/** Total of the first dressing, signed kg CaCO3 per m². */
export const firstCurrency = (
  applications: readonly { readonly number: number; readonly currency: number }[],
): number => applications.filter((one) => one.number === 1).reduce((sum, one) => sum + one.currency, 0);

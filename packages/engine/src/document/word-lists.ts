/** Words a report may use for how a pH was read, for its buffer and for a texture, as `evidence/soil-test.ts` types them. */
export const phMethods = [
  'water-1:1',
  'water-1:2',
  'water-1:2.5',
  'water-1:5',
  'water-paste',
  'cacl2-0.01M',
  'kcl-1M',
  'unstated',
  'media-1:2',
  'media-extract',
  'pour-through',
] as const;

export const bufferKinds = [
  'smp',
  'sikora',
  'sikora-2',
  'mehlich',
  'modified-mehlich',
  'adams-evans',
  'moore-sikora',
  'woodruff',
  'modified-woodruff',
] as const;

export const textures = [
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
] as const;

/** Forms of fertilizer nitrogen, as the almanac's `nitrogen-forms` and plain words name them. */
export const nitrogenWords = ['ammonium', 'urea', 'organic', 'ammonium nitrate', 'nitrate', 'map', 'dap'] as const;

/** Crops whose base content the almanac knows; the first two weighed fresh, the rest dry. */
export const cropWords = [
  'leafy vegetables',
  'root and fruit vegetables',
  'grass hay',
  'clover hay',
  'lucerne hay',
  'wheat grain',
] as const;

/** Nutrients a report may list; nitrogen by its form. */
export const nutrientWords = ['NO3-N', 'NH4-N', 'P', 'K', 'S', 'Ca', 'Mg', 'Fe', 'Mn', 'B', 'Cu', 'Zn', 'Mo'] as const;

/** What a laboratory draws nutrients out with, as `evidence/soil-test.ts` types them. */
export const extractants = [
  'mehlich-3',
  'dtpa',
  'bray-p1',
  'olsen',
  'ammonium-acetate',
  'hot-water',
  'sulfate-s',
  'sme',
  'dtpa-sme',
] as const;

import type { BufferMethod, PhMethod, SoilTest, TextureClass } from '../evidence/soil-test.ts';
import type { Place } from '../plan/place.ts';
import type { IsoDate, Metre } from '../units/si.ts';

export type Mutable<T> = { -readonly [K in keyof T]: T[K] };

/** What a table leaves out and its reader says. */
export interface RowDefaults {
  readonly today: IsoDate;
  readonly region?: string;
}

/** A row on its way to a place: what belongs together only when the row is complete. */
export interface Draft {
  readonly place: Mutable<Place>;
  readonly test: Mutable<SoilTest>;
  depth?: Metre;
  testDepth?: Metre;
  areaGiven?: boolean;
  ph?: number;
  phMethod?: PhMethod;
  buffer?: number;
  bufferMethod?: BufferMethod;
  target?: number;
  targetLow?: number;
  targetHigh?: number;
  texture?: TextureClass;
  sand?: number;
  silt?: number;
  clay?: number;
  alkalinity?: number;
  printedRate?: number;
  printedDepth?: Metre;
  printedTarget?: number;
  printedCce?: number;
}

/**
 * Every entry a test of a table may get. All tests of a table are made with the same entries in the same order, empty
 * ones included: engines run code over objects of one shape several times faster. Readers ask for `undefined`, so an empty
 * entry is the same to them as none.
 */
const EMPTY_TEST = {
  laboratory: undefined,
  region: undefined,
  cores: undefined,
  ph: undefined,
  buffer: undefined,
  acidity: undefined,
  acidityByVolume: undefined,
  aluminium: undefined,
  calcium: undefined,
  magnesium: undefined,
  potassium: undefined,
  sodium: undefined,
  cec: undefined,
  cecBasis: undefined,
  baseSaturation: undefined,
  organicMatter: undefined,
  organicCarbon: undefined,
  texture: undefined,
  sand: undefined,
  silt: undefined,
  clay: undefined,
  carbonate: undefined,
  acidFizz: undefined,
  vinegarFizz: undefined,
  limeBufferCapacity: undefined,
  conductivity: undefined,
  scoopedDensity: undefined,
  lead: undefined,
  printedRate: undefined,
};
const EMPTY_PLACE = {
  volume: undefined,
  texture: undefined,
  organicMatter: undefined,
  bulkDensity: undefined,
  coarseFragments: undefined,
  target: undefined,
  water: undefined,
  nearOpenWater: undefined,
  childrenOrPets: undefined,
  certifiedOrganic: undefined,
};

export function startDraft(row: number, defaults: RowDefaults): Draft {
  const id = `row-${row}`;
  const test = {
    id: `${id}-test`,
    date: defaults.today,
    instrument: 'laboratory',
    depth: 0.15,
    ...EMPTY_TEST,
    region: defaults.region,
  } as unknown as Mutable<SoilTest>;
  const place = {
    id,
    name: id,
    kind: 'bed',
    situation: 'open ground',
    medium: 'mineral',
    area: 1,
    depth: 0.15,
    plants: [],
    tests: [test],
    applications: [],
    ...EMPTY_PLACE,
  } as unknown as Mutable<Place>;
  return { test, place };
}

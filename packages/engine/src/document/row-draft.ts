import type { BufferMethod, PhMethod, SoilTest, TextureClass } from '../evidence/soil-test.ts';
import type { Place } from '../plan/place.ts';
import type { IsoDate, Metre } from '../units/si.ts';

/** Every entry may be written, and written as empty. */
type Mutable<T> = { -readonly [K in keyof T]: undefined extends T[K] ? T[K] | undefined : T[K] };

/** What a table leaves out and its reader says. */
export interface RowDefaults {
  readonly today: IsoDate;
  readonly region?: string;
}

/** A row on its way to a place: what belongs together only when the row is complete. */
export interface Draft {
  readonly place: Mutable<Place>;
  readonly test: Mutable<SoilTest>;
  depth: Metre | undefined;
  testDepth: Metre | undefined;
  areaGiven: boolean;
  ph: number | undefined;
  phMethod: PhMethod | undefined;
  buffer: number | undefined;
  bufferMethod: BufferMethod | undefined;
  target: number | undefined;
  targetLow: number | undefined;
  targetHigh: number | undefined;
  texture: TextureClass | undefined;
  sand: number | undefined;
  silt: number | undefined;
  clay: number | undefined;
  alkalinity: number | undefined;
  printedRate: number | undefined;
  printedDepth: Metre | undefined;
  printedTarget: number | undefined;
  printedCce: number | undefined;
}

/**
 * A draft with every entry a test and a place of a table may get, empty ones included, always in the same order: engines
 * run code over objects of one shape several times faster. Readers ask for `undefined`, so an empty entry is the same to
 * them as none.
 */
export function startDraft(row: number, defaults: RowDefaults): Draft {
  const id = `row-${row}`;
  const test = {
    id: `${id}-test`,
    date: defaults.today,
    instrument: 'laboratory',
    depth: 0.15,
    laboratory: undefined,
    region: defaults.region,
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
  } as unknown as Mutable<SoilTest>;
  const place = {
    id,
    name: id,
    kind: 'bed',
    situation: 'open ground',
    medium: 'mineral',
    area: 1,
    depth: 0.15,
    plants: NONE,
    tests: [test],
    applications: NONE,
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
    diseases: undefined,
    yearly: undefined,
  } as unknown as Mutable<Place>;
  return {
    test,
    place,
    depth: undefined,
    testDepth: undefined,
    areaGiven: false,
    ph: undefined,
    phMethod: undefined,
    buffer: undefined,
    bufferMethod: undefined,
    target: undefined,
    targetLow: undefined,
    targetHigh: undefined,
    texture: undefined,
    sand: undefined,
    silt: undefined,
    clay: undefined,
    alkalinity: undefined,
    printedRate: undefined,
    printedDepth: undefined,
    printedTarget: undefined,
    printedCce: undefined,
  };
}

const NONE: readonly never[] = [];

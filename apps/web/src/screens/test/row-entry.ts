import { type GardenDocument, phMethods } from '@sorrel/engine/document';
import { numberOf, type TestEntry } from './draft.ts';

type PlaceEntry = GardenDocument['places'][number];
/** What a row says of its place itself, as a new place is written. */
export type NewPlace = Omit<PlaceEntry, 'tests' | 'applications'>;

type Put = (cell: string, test: Record<string, unknown>, place: Record<string, unknown>) => void;

/** A plain number gets the unit its column stands for (`docs/soil-test-table.md`). */
const withUnit = (cell: string, unit: string): string =>
  /^[+-]?\d+(?:[.,]\d+)?$/.test(cell) ? `${cell} ${unit}` : cell;
const measured =
  (key: string, unit: string): Put =>
  (cell, test) => {
    test[key] = withUnit(cell, unit);
  };
const text =
  (key: string): Put =>
  (cell, test) => {
    test[key] = cell;
  };
const word =
  (key: string): Put =>
  (cell, test) => {
    test[key] = cell.toLowerCase();
  };
const inside =
  (group: string, key: string, read: (cell: string) => unknown): Put =>
  (cell, test) => {
    test[group] = { ...(test[group] as object | undefined), [key]: read(cell) };
  };
const ofPlace =
  (key: string, read: (cell: string) => unknown): Put =>
  (cell, _, place) => {
    place[key] = read(cell);
  };
const lower = (cell: string): string => cell.toLowerCase();
const method = (cell: string): string => phMethods.find((each) => each.toLowerCase() === cell.toLowerCase()) ?? cell;

const soilOfPlace =
  (key: string, read: (cell: string) => unknown): Put =>
  (cell, _, place) => {
    place.soil = { ...(place.soil as object | undefined), [key]: read(cell) };
  };
const both =
  (...puts: Put[]): Put =>
  (cell, test, place) => {
    for (const put of puts) put(cell, test, place);
  };
const target =
  (key: 'low' | 'high' | 'aim'): Put =>
  (cell, _, place) => {
    place.target = { ...(place.target as object | undefined), [key]: numberOf(cell) };
  };

const columns: Readonly<Record<string, Put>> = {
  date: text('date'),
  laboratory: text('laboratory'),
  region: text('region'),
  by: word('by'),
  test_depth: text('depth'),
  cores: (cell, test) => {
    test.cores = numberOf(cell);
  },
  texture: both(word('texture'), soilOfPlace('texture', lower)),
  sand: measured('sand', '%'),
  silt: measured('silt', '%'),
  clay: measured('clay', '%'),
  om: both(
    measured('organicMatter', '%'),
    soilOfPlace('organicMatter', (cell) => withUnit(cell, '%')),
  ),
  oc: measured('organicCarbon', '%'),
  base_saturation: measured('baseSaturation', '%'),
  carbonate: measured('carbonate', '%'),
  acidity: measured('acidity', 'meq/100 g'),
  cec: measured('cec', 'meq/100 g'),
  aluminium: measured('aluminium', 'meq/100 g'),
  aluminum: measured('aluminium', 'meq/100 g'),
  calcium: measured('calcium', 'mg/kg'),
  magnesium: measured('magnesium', 'mg/kg'),
  potassium: measured('potassium', 'mg/kg'),
  sodium: measured('sodium', 'mg/kg'),
  lead: measured('lead', 'mg/kg'),
  conductivity: text('conductivity'),
  ph: inside('ph', 'value', numberOf),
  ph_method: inside('ph', 'in', method),
  buffer_ph: inside('buffer', 'value', numberOf),
  buffer: inside('buffer', 'kind', lower),
  acid_fizz: inside('fizz', 'acid', lower),
  vinegar_fizz: inside('fizz', 'vinegar', lower),
  printed_rate: inside('printedRate', 'rate', (cell) => cell),
  printed_depth: inside('printedRate', 'depth', (cell) => cell),
  printed_target: inside('printedRate', 'target', numberOf),
  printed_cce: inside('printedRate', 'cce', (cell) => withUnit(cell, '%')),
  kind: ofPlace('kind', lower),
  situation: ofPlace('situation', lower),
  medium: ofPlace('medium', lower),
  area: ofPlace('area', (cell) => cell),
  depth: ofPlace('depth', (cell) => cell),
  volume: (cell, _, place) => {
    place.pots = { count: 1, volume: cell };
  },
  stones: soilOfPlace('stones', (cell) => withUnit(cell, '%')),
  plants: ofPlace('plants', (cell) =>
    cell
      .split(';')
      .map((name) => name.trim())
      .filter((name) => name !== ''),
  ),
  water_alkalinity: (cell, _, place) => {
    place.water = { alkalinity: cell };
  },
  target: target('aim'),
  target_low: target('low'),
  target_high: target('high'),
  near_open_water: ofPlace('nearOpenWater', lower),
  children_or_pets: ofPlace('childrenOrPets', lower),
  certified_organic: ofPlace('certifiedOrganic', lower),
};

/** Columns that say something of the place itself. */
export const placeColumns: ReadonlySet<string> = new Set([
  'kind',
  'situation',
  'medium',
  'area',
  'depth',
  'volume',
  'stones',
  'plants',
  'water_alkalinity',
  'target',
  'target_low',
  'target_high',
  'near_open_water',
  'children_or_pets',
  'certified_organic',
]);

/** A heading as the reader of tables knows it. */
export const columnName = (title: string): string =>
  title
    .trim()
    .toLowerCase()
    .replace(/[\s-]+/g, '_');

/** A single target pH is taken as a range this wide to either side, as the reader of tables does. */
const TARGET_MARGIN = 0.5;

/**
 * A row of a table as the record stores it. Check the row with the engine's reader first.
 *
 * @param day taken where the row gives none, ISO 8601
 */
export function rowEntry(
  header: readonly string[],
  cells: readonly string[],
  day: string,
): { readonly name: string; readonly test: TestEntry; readonly place: NewPlace } {
  const test: Record<string, unknown> = { date: day, by: 'laboratory' };
  const place: Record<string, unknown> = {};
  let name = '';
  header.forEach((title, index) => {
    const column = columnName(title);
    const cell = cells[index]?.trim() ?? '';
    if (cell === '') return;
    if (column === 'place') name = cell;
    else columns[column]?.(cell, test, place);
  });
  return { name, test: test as unknown as TestEntry, place: { ...wideTarget(place), name } as NewPlace };
}

function wideTarget(place: Record<string, unknown>): Record<string, unknown> {
  const given = place.target as { low?: number; high?: number; aim?: number } | undefined;
  if (given === undefined) return place;
  const low = given.low ?? (given.aim ?? given.high ?? 0) - TARGET_MARGIN;
  const high = given.high ?? (given.aim ?? low) + TARGET_MARGIN;
  return { ...place, target: { ...given, low, high } };
}

import { chargeOfFraction } from './cation.ts';
import { limits } from './limits.ts';
import type { RowCells } from './row-cells.ts';
import type { Draft } from './row-draft.ts';
import { bufferKinds, phMethods, textures } from './word-lists.ts';

/** Puts a cell that is not empty where it belongs. */
export type Column = (cell: string, draft: Draft, cells: RowCells) => void;

const PERCENT = 0.01;
const MEQ_PER_100_G = 0.01;
const MG_PER_KG = 1e-6;

const words = <T extends string>(known: readonly T[], more: Readonly<Record<string, T>> = {}): ReadonlyMap<string, T> =>
  new Map<string, T>([...known.map((word) => [word, word] as const), ...Object.entries(more)]);

const yesNo = words(['yes', 'no']);
const instruments = words(['laboratory', 'slurry-meter', 'colour-kit', 'strip', 'probe'], {
  'color-kit': 'colour-kit',
});
const kinds = words(['bed', 'plot', 'container']);
const situations = words(['open ground', 'around plants', 'lawn', 'container']);
const media = words(['mineral', 'organic', 'mix', 'soilless']);
const methods = words(phMethods);
const buffers = words(bufferKinds);
const classes = words(textures);
const acidFizz = words(['none', 'very slight', 'slight', 'strong', 'violent']);
const vinegarFizz = words(['silent', 'heard only', 'mild', 'vigorous']);

/** Sets a value when the cell could be read. */
const set = <T, K extends keyof T>(target: T, key: K, value: T[K] | undefined): void => {
  if (value !== undefined) target[key] = value;
};

type Share = 'baseSaturation' | 'organicMatter' | 'organicCarbon' | 'carbonate';
const share =
  (key: Share, field: string): Column =>
  (cell, { test }, cells) =>
    set(test, key, cells.quantity(cell, field, 'massFraction', limits.share, PERCENT));
const size =
  (key: 'sand' | 'silt' | 'clay'): Column =>
  (cell, draft, cells) =>
    set(draft, key, cells.quantity(cell, key, 'massFraction', limits.share, PERCENT));
const charge =
  (key: 'acidity' | 'cec' | 'aluminium', field: string): Column =>
  (cell, { test }, cells) =>
    set(test, key, cells.quantity(cell, field, 'chargePerMass', limits.charge, MEQ_PER_100_G));
const cation =
  (key: 'calcium' | 'magnesium' | 'potassium' | 'sodium'): Column =>
  (cell, { test }, cells) => {
    const fraction = cells.quantity(cell, key, 'massFraction', limits.share, MG_PER_KG);
    if (fraction !== undefined) test[key] = chargeOfFraction(key, fraction);
  };
const ph =
  (key: 'ph' | 'buffer' | 'target' | 'targetLow' | 'targetHigh' | 'printedTarget', field: string): Column =>
  (cell, draft, cells) =>
    set(draft, key, cells.ph(cell, field));
const length =
  (key: 'depth' | 'testDepth' | 'printedDepth', field: string): Column =>
  (cell, draft, cells) =>
    set(draft, key, cells.quantity(cell, field, 'length', limits.depth));
const flag =
  (key: 'nearOpenWater' | 'childrenOrPets' | 'certifiedOrganic', field: string): Column =>
  (cell, { place }, cells) => {
    const answer = cells.choice(cell, field, yesNo);
    if (answer !== undefined) place[key] = answer === 'yes';
  };

/** Every column of a table of soil tests, as `docs/soil-test-table.md` explains them. */
export const columns: Readonly<Record<string, Column>> = {
  place: (cell, { place }) => {
    place.name = cell;
  },
  date: (cell, { test }) => {
    test.date = cell;
  },
  laboratory: (cell, { test }) => {
    test.laboratory = cell;
  },
  region: (cell, { test }) => {
    test.region = cell;
  },
  by: (cell, { test }, cells) => set(test, 'instrument', cells.choice(cell, 'by', instruments)),
  kind: (cell, { place }, cells) => set(place, 'kind', cells.choice(cell, 'kind', kinds)),
  situation: (cell, { place }, cells) => set(place, 'situation', cells.choice(cell, 'situation', situations)),
  medium: (cell, { place }, cells) => set(place, 'medium', cells.choice(cell, 'medium', media)),
  area: (cell, draft, cells) => {
    draft.areaGiven = true;
    set(draft.place, 'area', cells.quantity(cell, 'area', 'area', limits.area));
  },
  volume: (cell, { place }, cells) => set(place, 'volume', cells.quantity(cell, 'volume', 'volume', limits.volume)),
  depth: length('depth', 'depth'),
  test_depth: length('testDepth', 'test_depth'),
  cores: (cell, { test }, cells) => set(test, 'cores', cells.number(cell, 'cores', '12')),
  texture: (cell, draft, cells) => set(draft, 'texture', cells.choice(cell, 'texture', classes)),
  sand: size('sand'),
  silt: size('silt'),
  clay: size('clay'),
  om: share('organicMatter', 'om'),
  oc: share('organicCarbon', 'oc'),
  stones: (cell, { place }, cells) =>
    set(place, 'coarseFragments', cells.quantity(cell, 'stones', 'massFraction', limits.share, PERCENT)),
  ph: ph('ph', 'ph'),
  ph_method: (cell, draft, cells) => set(draft, 'phMethod', cells.choice(cell, 'ph_method', methods)),
  buffer_ph: ph('buffer', 'buffer_ph'),
  buffer: (cell, draft, cells) => set(draft, 'bufferMethod', cells.choice(cell, 'buffer', buffers)),
  acidity: charge('acidity', 'acidity'),
  aluminium: charge('aluminium', 'aluminium'),
  aluminum: charge('aluminium', 'aluminum'),
  cec: charge('cec', 'cec'),
  base_saturation: share('baseSaturation', 'base_saturation'),
  calcium: cation('calcium'),
  magnesium: cation('magnesium'),
  potassium: cation('potassium'),
  sodium: cation('sodium'),
  carbonate: share('carbonate', 'carbonate'),
  acid_fizz: (cell, { test }, cells) => set(test, 'acidFizz', cells.choice(cell, 'acid_fizz', acidFizz)),
  vinegar_fizz: (cell, { test }, cells) => set(test, 'vinegarFizz', cells.choice(cell, 'vinegar_fizz', vinegarFizz)),
  conductivity: (cell, { test }, cells) =>
    set(test, 'conductivity', cells.quantity(cell, 'conductivity', 'conductivity', limits.conductivity)),
  lead: (cell, { test }, cells) =>
    set(test, 'lead', cells.quantity(cell, 'lead', 'massFraction', limits.lead, MG_PER_KG)),
  water_alkalinity: (cell, draft, cells) =>
    set(draft, 'alkalinity', cells.quantity(cell, 'water_alkalinity', 'alkalinity', limits.alkalinity)),
  printed_rate: (cell, draft, cells) =>
    set(draft, 'printedRate', cells.quantity(cell, 'printed_rate', 'massPerArea', limits.massPerArea)),
  printed_depth: length('printedDepth', 'printed_depth'),
  printed_target: ph('printedTarget', 'printed_target'),
  printed_cce: (cell, draft, cells) =>
    set(draft, 'printedCce', cells.quantity(cell, 'printed_cce', 'massFraction', limits.cce, PERCENT)),
  plants: (cell, { place }, cells) => set(place, 'plants', cells.plants(cell, 'plants')),
  target: ph('target', 'target'),
  target_low: ph('targetLow', 'target_low'),
  target_high: ph('targetHigh', 'target_high'),
  near_open_water: flag('nearOpenWater', 'near_open_water'),
  children_or_pets: flag('childrenOrPets', 'children_or_pets'),
  certified_organic: flag('certifiedOrganic', 'certified_organic'),
};

export const rowColumns: readonly string[] = Object.keys(columns);

import { chargeOfFraction } from './cation.ts';
import { type Limit, limits } from './limits.ts';
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

const share = (cell: string, field: string, cells: RowCells): number | undefined =>
  cells.quantity(cell, field, 'massFraction', limits.share, PERCENT);
const charge = (cell: string, field: string, cells: RowCells): number | undefined =>
  cells.quantity(cell, field, 'chargePerMass', limits.charge, MEQ_PER_100_G);
const cation = (cell: string, field: 'calcium' | 'magnesium' | 'potassium' | 'sodium', cells: RowCells) => {
  const fraction = partsPerMillion(cell, field, cells, limits.share);
  return fraction === undefined ? undefined : chargeOfFraction(field, fraction);
};
const partsPerMillion = (cell: string, field: string, cells: RowCells, limit: Limit): number | undefined =>
  cells.quantity(cell, field, 'massFraction', limit, MG_PER_KG);
const length = (cell: string, field: string, cells: RowCells): number | undefined =>
  cells.quantity(cell, field, 'length', limits.depth);
const flag = (cell: string, field: string, cells: RowCells): boolean | undefined => {
  const answer = cells.choice(cell, field, yesNo);
  return answer === undefined ? undefined : answer === 'yes';
};

/**
 * Every column of a table of soil tests, as `docs/soil-test-table.md` explains them. Each writes one entry by its own
 * name, which engines do several times faster than by a name that is handed over.
 */
export const columns: Readonly<Record<string, Column>> = {
  place: (cell, { place }) => {
    place.name = cell;
  },
  date: (cell, { test }, cells) => {
    test.date = cells.same(cell);
  },
  laboratory: (cell, { test }, cells) => {
    test.laboratory = cells.same(cell);
  },
  region: (cell, { test }, cells) => {
    test.region = cells.same(cell);
  },
  by: (cell, { test }, cells) => {
    test.instrument = cells.choice(cell, 'by', instruments) ?? test.instrument;
  },
  kind: (cell, { place }, cells) => {
    place.kind = cells.choice(cell, 'kind', kinds) ?? place.kind;
  },
  situation: (cell, { place }, cells) => {
    place.situation = cells.choice(cell, 'situation', situations) ?? place.situation;
  },
  medium: (cell, { place }, cells) => {
    place.medium = cells.choice(cell, 'medium', media) ?? place.medium;
  },
  area: (cell, draft, cells) => {
    draft.areaGiven = true;
    draft.place.area = cells.quantity(cell, 'area', 'area', limits.area) ?? draft.place.area;
  },
  volume: (cell, { place }, cells) => {
    place.volume = cells.quantity(cell, 'volume', 'volume', limits.volume);
  },
  depth: (cell, draft, cells) => {
    draft.depth = length(cell, 'depth', cells);
  },
  test_depth: (cell, draft, cells) => {
    draft.testDepth = length(cell, 'test_depth', cells);
  },
  cores: (cell, { test }, cells) => {
    test.cores = cells.number(cell, 'cores', '12');
  },
  texture: (cell, draft, cells) => {
    draft.texture = cells.choice(cell, 'texture', classes);
  },
  sand: (cell, draft, cells) => {
    draft.sand = share(cell, 'sand', cells);
  },
  silt: (cell, draft, cells) => {
    draft.silt = share(cell, 'silt', cells);
  },
  clay: (cell, draft, cells) => {
    draft.clay = share(cell, 'clay', cells);
  },
  om: (cell, { test }, cells) => {
    test.organicMatter = share(cell, 'om', cells);
  },
  oc: (cell, { test }, cells) => {
    test.organicCarbon = share(cell, 'oc', cells);
  },
  stones: (cell, { place }, cells) => {
    place.coarseFragments = share(cell, 'stones', cells);
  },
  ph: (cell, draft, cells) => {
    draft.ph = cells.ph(cell, 'ph');
  },
  ph_method: (cell, draft, cells) => {
    draft.phMethod = cells.choice(cell, 'ph_method', methods);
  },
  buffer_ph: (cell, draft, cells) => {
    draft.buffer = cells.ph(cell, 'buffer_ph');
  },
  buffer: (cell, draft, cells) => {
    draft.bufferMethod = cells.choice(cell, 'buffer', buffers);
  },
  acidity: (cell, { test }, cells) => {
    test.acidity = charge(cell, 'acidity', cells);
  },
  aluminium: (cell, { test }, cells) => {
    test.aluminium = charge(cell, 'aluminium', cells);
  },
  aluminum: (cell, { test }, cells) => {
    test.aluminium = charge(cell, 'aluminum', cells);
  },
  cec: (cell, { test }, cells) => {
    test.cec = charge(cell, 'cec', cells);
  },
  base_saturation: (cell, { test }, cells) => {
    test.baseSaturation = share(cell, 'base_saturation', cells);
  },
  calcium: (cell, { test }, cells) => {
    test.calcium = cation(cell, 'calcium', cells);
  },
  magnesium: (cell, { test }, cells) => {
    test.magnesium = cation(cell, 'magnesium', cells);
  },
  potassium: (cell, { test }, cells) => {
    test.potassium = cation(cell, 'potassium', cells);
  },
  sodium: (cell, { test }, cells) => {
    test.sodium = cation(cell, 'sodium', cells);
  },
  carbonate: (cell, { test }, cells) => {
    test.carbonate = share(cell, 'carbonate', cells);
  },
  acid_fizz: (cell, { test }, cells) => {
    test.acidFizz = cells.choice(cell, 'acid_fizz', acidFizz);
  },
  vinegar_fizz: (cell, { test }, cells) => {
    test.vinegarFizz = cells.choice(cell, 'vinegar_fizz', vinegarFizz);
  },
  conductivity: (cell, { test }, cells) => {
    test.conductivity = cells.quantity(cell, 'conductivity', 'conductivity', limits.conductivity);
  },
  lead: (cell, { test }, cells) => {
    test.lead = partsPerMillion(cell, 'lead', cells, limits.lead);
  },
  water_alkalinity: (cell, draft, cells) => {
    draft.alkalinity = cells.quantity(cell, 'water_alkalinity', 'alkalinity', limits.alkalinity);
  },
  printed_rate: (cell, draft, cells) => {
    draft.printedRate = cells.quantity(cell, 'printed_rate', 'massPerArea', limits.massPerArea);
  },
  printed_depth: (cell, draft, cells) => {
    draft.printedDepth = length(cell, 'printed_depth', cells);
  },
  printed_target: (cell, draft, cells) => {
    draft.printedTarget = cells.ph(cell, 'printed_target');
  },
  printed_cce: (cell, draft, cells) => {
    draft.printedCce = cells.quantity(cell, 'printed_cce', 'massFraction', limits.cce, PERCENT);
  },
  plants: (cell, { place }, cells) => {
    place.plants = cells.plants(cell, 'plants') ?? place.plants;
  },
  target: (cell, draft, cells) => {
    draft.target = cells.ph(cell, 'target');
  },
  target_low: (cell, draft, cells) => {
    draft.targetLow = cells.ph(cell, 'target_low');
  },
  target_high: (cell, draft, cells) => {
    draft.targetHigh = cells.ph(cell, 'target_high');
  },
  near_open_water: (cell, { place }, cells) => {
    place.nearOpenWater = flag(cell, 'near_open_water', cells);
  },
  children_or_pets: (cell, { place }, cells) => {
    place.childrenOrPets = flag(cell, 'children_or_pets', cells);
  },
  certified_organic: (cell, { place }, cells) => {
    place.certifiedOrganic = flag(cell, 'certified_organic', cells);
  },
};

export const rowColumns: readonly string[] = Object.keys(columns);

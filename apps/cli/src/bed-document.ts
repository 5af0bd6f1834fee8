import { showing } from './options.ts';
import { words } from './words.ts';

const text = { type: 'string' } as const;

/** Options of `sorrel bed`, each the entry of the garden document of the same meaning. */
export const bedOptions = {
  ...showing,
  ph: text,
  'ph-in': text,
  buffer: text,
  'buffer-kind': text,
  texture: text,
  sand: text,
  silt: text,
  clay: text,
  'organic-matter': text,
  size: text,
  area: text,
  depth: text,
  plants: text,
  target: text,
  situation: text,
  medium: text,
  magnesium: text,
  cec: text,
  acidity: text,
  carbonate: text,
  fizz: text,
  by: text,
  date: text,
  region: text,
  material: text,
  cce: text,
  why: { type: 'boolean' },
  figure: text,
  'as-of': text,
} as const;

type Values = { readonly [K in keyof typeof bedOptions]?: string | boolean | undefined };

/** Where each option stands in the document, so that a problem can point back at the option. */
const places: Readonly<Record<string, string>> = {
  'tests[0].ph.value': 'ph',
  'tests[0].ph.in': 'ph-in',
  'tests[0].buffer.value': 'buffer',
  'tests[0].buffer.kind': 'buffer-kind',
  'tests[0].fizz.vinegar': 'fizz',
  'tests[0].by': 'by',
  'tests[0].date': 'date',
  'tests[0].magnesium': 'magnesium',
  'tests[0].cec': 'cec',
  'tests[0].acidity': 'acidity',
  'tests[0].carbonate': 'carbonate',
  'soil.texture': 'texture',
  'soil.sand': 'sand',
  'soil.silt': 'silt',
  'soil.clay': 'clay',
  'soil.organicMatter': 'organic-matter',
  size: 'size',
  area: 'area',
  depth: 'depth',
  situation: 'situation',
  medium: 'medium',
  'materials[0].material': 'material',
  'materials[0].cce': 'cce',
};

/** The option a problem's field stands for. */
export function optionOf(field: string): string {
  if (field.startsWith('plants')) return '--plants';
  if (field.startsWith('target')) return '--target';
  const option = places[field];
  return option === undefined ? field : `--${option}`;
}

/** Numbers become numbers; what is none stays as typed, so that the reader's own message explains it. */
const number = (value: string | boolean | undefined): number | string | undefined => {
  if (typeof value !== 'string') return undefined;
  const plain = Number(value.trim().replace(/^([+-]?\d+),(\d+)$/, '$1.$2'));
  return value.trim() === '' || Number.isNaN(plain) ? value : plain;
};

/** The garden document of one bed. */
export function bedDocument(values: Values, today: string): unknown {
  const by = values.by ?? 'laboratory';
  const test = given({
    date: values.date ?? today,
    by,
    ph: values.ph === undefined ? undefined : given({ value: number(values.ph), in: values['ph-in'] }),
    buffer:
      values.buffer === undefined && values['buffer-kind'] === undefined
        ? undefined
        : given({ value: number(values.buffer), kind: values['buffer-kind'] }),
    fizz: values.fizz === undefined ? undefined : { vinegar: values.fizz },
    depth: values.depth,
    magnesium: values.magnesium,
    cec: values.cec,
    acidity: values.acidity,
    carbonate: values.carbonate,
  });
  const soil = given({
    texture: values.texture,
    sand: values.sand,
    silt: values.silt,
    clay: values.clay,
    organicMatter: values['organic-matter'],
  });
  return given({
    garden: words.oneBed,
    region: values.region,
    places: [
      given({
        name: words.thisBed,
        size: values.size,
        area: values.area,
        depth: values.depth,
        situation: values.situation,
        medium: values.medium,
        soil: Object.keys(soil).length === 0 ? undefined : soil,
        plants: plantList(values.plants),
        target: targetOf(values.target),
        tests: values.ph === undefined ? undefined : [test],
      }),
    ],
    materials: values.material === undefined ? undefined : [given({ material: values.material, cce: values.cce })],
  });
}

const given = (entry: Readonly<Record<string, unknown>>): Record<string, unknown> =>
  Object.fromEntries(Object.entries(entry).filter(([, value]) => value !== undefined));

/** Plants between commas; `blueberry, highbush` with a space after the comma is one plant. */
const plantList = (value: string | boolean | undefined): string[] | undefined =>
  typeof value !== 'string'
    ? undefined
    : value
        .split(/,(?! )|;/)
        .map((plant) => plant.trim())
        .filter((plant) => plant !== '');

function targetOf(value: string | boolean | undefined): unknown {
  if (typeof value !== 'string') return undefined;
  const [low, high] = value.split(/\s*(?:-|–|to)\s*/);
  return given({ low: number(low), high: number(high) });
}

/** US units for whoever measures in feet, inches, pounds or gallons. */
export function unitsMeant(values: Values): 'us' | undefined {
  const measured = [values.size, values.area, values.depth].filter((each) => typeof each === 'string').join(' ');
  return /\d\s*(?:ft|feet|foot|in|inch|inches|yd|sq ft|acres?|["'])(?![a-z])/i.test(measured) ? 'us' : undefined;
}

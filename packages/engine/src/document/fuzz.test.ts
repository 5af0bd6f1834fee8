import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planGarden } from '../plan/plan-garden.ts';
import { recommend } from '../plan/recommend.ts';
import { readGarden } from './read-garden.ts';
import { rowReader } from './row.ts';
import { columns, rowColumns } from './row-columns.ts';
import { bufferKinds, cropWords, phMethods, textures } from './word-lists.ts';

const today = '2026-11-01';

/** Words that mean something somewhere, and words that mean nothing anywhere. */
const word = fc.constantFrom(
  ...[
    'loam',
    'clay',
    'sikora',
    'smp',
    'laboratory',
    'probe',
    'tomato',
    'lavender',
    'blueberry, highbush',
    'lawn',
    'container',
  ],
  ...[
    '6 in',
    '15 cm',
    '-2 cm',
    '4 x 8 ft',
    '3 m2',
    '12 L',
    '5 lb',
    '4.5 %',
    '140 %',
    '12 meq/100 g',
    '60 ppm',
    '0.4 dS/m',
  ],
  ...[
    '50 lb/1000 ft2',
    '2026-09-14',
    '2026-02-30',
    'yes',
    'none',
    'slight',
    'mild',
    'violent',
    'mix',
    'soilless',
    'mineral',
    '',
  ],
);
const value: fc.Arbitrary<unknown> = fc.oneof(
  word,
  fc.double({ min: -1, max: 15 }),
  fc.double({ min: 3.5, max: 9, noNaN: true }),
  fc.boolean(),
  fc.constantFrom(null, undefined),
  fc.anything(),
);
/** An entry with each field there or not, and now and then one of them spoiled or one that nobody knows. */
function entry(
  good: Record<string, fc.Arbitrary<unknown>>,
  ...needed: string[]
): fc.Arbitrary<Record<string, unknown>> {
  const spoil = fc.option(fc.tuple(fc.constantFrom(...Object.keys(good), 'junk'), value), { freq: 2, nil: undefined });
  return fc
    .tuple(fc.record(good, { requiredKeys: needed }), spoil)
    .map(([made, spoiled]) => (spoiled === undefined ? made : { ...made, [spoiled[0]]: spoiled[1] }));
}
const one = fc.constantFrom;
const figure = (min: number, max: number) =>
  fc.double({ min, max, noNaN: true }).map((each) => Number(each.toFixed(2)));
const months = <T>(value: T): T[] => Array.from({ length: 12 }, () => value);
const soilTest = entry(
  {
    date: one('2026-09-14', '2025-03-01'),
    by: one('laboratory', 'laboratory', 'slurry-meter', 'color-kit', 'probe'),
    ph: entry({ value: figure(3.6, 9), in: one(...phMethods) }, 'value'),
    buffer: entry({ value: figure(5.5, 6.5), kind: one(...bufferKinds) }, 'value', 'kind'),
    depth: one('6 in', '20 cm'),
    organicMatter: one('1 %', '4.5 %', '30 %'),
    texture: one(...textures),
    acidity: one('2 meq/100 g', '9 cmol/kg'),
    aluminum: one('5 ppm', '0.5 meq/100 g'),
    calcium: one('820 ppm', '4 meq/100 g'),
    magnesium: one('40 ppm', '260 lb/acre'),
    cec: one('6 meq/100 g', '25 cmol/kg'),
    carbonate: one('0 %', '0.2 %', '12 %'),
    fizz: entry({ acid: one('none', 'slight', 'strong'), vinegar: one('silent', 'vigorous') }),
    lead: one('20 ppm', '700 ppm'),
    printedRate: fc.constant({ rate: '50 lb/1000 ft2', depth: '7 in', target: 6.5 }),
  },
  'date',
  'by',
  'ph',
);
const growing = entry(
  {
    name: one('a', 'b', 'c', 'd'),
    kind: one('bed', 'plot', 'container'),
    size: one('4 x 8 ft', '3 m2'),
    depth: one('6 in', '30 cm'),
    situation: one('open ground', 'around plants', 'lawn'),
    medium: one('mineral', 'organic', 'mix', 'soilless'),
    soil: entry({ texture: one(...textures), organicMatter: one('2 %', '8 %'), stones: one('10 %') }),
    plants: fc.array(one('tomato', 'lavender', 'blueberry, highbush', 'potato', 'camellia', 'tomatto'), {
      maxLength: 3,
    }),
    target: fc.constant({ low: 6, high: 7 }),
    water: fc.constant({ alkalinity: '200 mg/L CaCO3', perYear: '400 mm' }),
    feeds: fc.array(one({ form: 'urea', nitrogen: '10 g/m2' }, { material: 'ammonium sulfate', amount: '5 lb' }), {
      maxLength: 2,
    }),
    harvest: fc.array(entry({ of: one(...cropWords), weight: one('3 kg/m2', '80 lb') }, 'of', 'weight'), {
      maxLength: 2,
    }),
    compost: fc.array(
      entry({ material: one('compost', 'chicken manure', 'gypsum'), amount: one('1 in', '30 L', '2 kg') }),
      { maxLength: 2 },
    ),
    tests: fc.array(soilTest, { maxLength: 3 }),
    applications: fc.array(one({ date: '2026-03-01', material: 'calcitic-limestone', amount: '5 lb' }), {
      maxLength: 2,
    }),
  },
  'name',
  'tests',
);
const garden = entry(
  {
    garden: fc.constant('g'),
    units: one('metric', 'us'),
    climate: one('maritime', 'Mediterranean'),
    hemisphere: one('north', 'south'),
    latitude: one(46, -33, 0),
    rain: one(months('80 mm'), months('0 in'), months('3 m')),
    airTemperature: one(months(9), months(-20)),
    overshootChance: one(0.01, 0.05, 0.5),
    places: fc.array(growing, { minLength: 1, maxLength: 3 }),
    materials: fc.array(
      one(
        { material: 'dolomitic-limestone', onHand: '1 lb' },
        { material: 'wood-ash-stove' },
        { material: 'sulfur-powder' },
      ),
      { maxLength: 3 },
    ),
  },
  'garden',
  'places',
);
const document = fc.oneof({ weight: 1, arbitrary: fc.anything() }, { weight: 9, arbitrary: garden });

const sound = (problem: { field: string; message: string; fix: string }): void => {
  expect(problem.message.length).toBeGreaterThan(5);
  expect(problem.fix.length).toBeGreaterThan(5);
  // What the person typed may hold braces; a slot of ours may not be left open.
  expect(problem.fix).not.toMatch(/\{(?:nearest|known|example|field|found|low|high)\}/);
};

describe('whatever is written', () => {
  it('a garden document is read or explained, and what is served can be planned', () => {
    fc.assert(
      fc.property(document, (typed) => {
        const read = readGarden(typed, { today });
        for (const each of read.problems) sound(each);
        if (read.garden.places.length === 0) expect(read.problems.length).toBeGreaterThan(0);
        const plan = planGarden(read.garden, { explain: true });
        expect(plan.recommendations).toHaveLength(read.garden.places.length);
        for (const { applications } of plan.recommendations)
          for (const { mass } of applications) expect(mass >= 0 && Number.isFinite(mass)).toBe(true);
      }),
      { numRuns: 1500 },
    );
  });
  it('a row is read or explained, and what is served can be planned', () => {
    const reader = rowReader(rowColumns, { today });
    const settings = { today, overshootChance: 0.05, hemisphere: 'north' as const, finenessSystem: 'OH' };
    const text = figure(3.6, 9).map(String);
    const cell = fc.oneof({ weight: 60, arbitrary: fc.constant('') }, word, text, fc.string());
    const row = fc.tuple(
      fc.array(cell, { minLength: rowColumns.length, maxLength: rowColumns.length }),
      text,
      one('', '6.1'),
      one('loam', 'clay', ''),
    );
    fc.assert(
      fc.property(row, ([cells, ph, buffer, texture]) => {
        const set = { ph, buffer_ph: buffer, buffer: buffer && 'sikora', texture };
        const given = rowColumns.map((column, index) =>
          Object.hasOwn(set, column) ? set[column as keyof typeof set] : (cells[index] ?? ''),
        );
        const read = reader.read(given, 1);
        if (read.ok) recommend(read.place, [], settings);
        else for (const each of read.problems) sound(each);
      }),
      { numRuns: 3000 },
    );
  });
  it('every column is one the reader knows', () => expect(Object.keys(columns)).toEqual(rowColumns));
});

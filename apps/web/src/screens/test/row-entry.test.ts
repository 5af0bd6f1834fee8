import { readGarden, rowColumns, rowReader } from '@sorrel/engine/document';
import { describe, expect, it } from 'vitest';
import { checkTest } from './check-test.ts';
import { contentOf, draftOf } from './draft.ts';
import { rowEntry } from './row-entry.ts';
import { splitTable } from './split-table.ts';

const today = '2026-11-25';
const sample: Readonly<Record<string, string>> = {
  place: 'North bed',
  date: '2026-10-02',
  laboratory: 'Lab',
  region: 'Oregon',
  by: 'Laboratory',
  kind: 'Bed',
  situation: 'open ground',
  medium: 'mineral',
  area: '3 m2',
  depth: '15 cm',
  test_depth: '6 in',
  cores: '12',
  texture: 'Silt Loam',
  om: '4,2',
  ph: '5.3',
  ph_method: 'cacl2-0.01M',
  buffer_ph: '6.2',
  buffer: 'Sikora',
  acidity: '6.5',
  cec: '14 cmol/kg',
  base_saturation: '55',
  calcium: '1100',
  magnesium: '120',
  potassium: '90',
  sodium: '12',
  aluminium: '0.1',
  conductivity: '0.4 dS/m',
  lead: '30',
  vinegar_fizz: 'silent',
  acid_fizz: 'none',
  carbonate: '0',
  printed_rate: '50 lb/1000 ft2',
  printed_depth: '7 in',
  printed_target: '6.5',
  printed_cce: '100',
  stones: '5',
  water_alkalinity: '150 mg/L CaCO3',
  plants: 'tomato; cabbage',
  target: '6.4',
  near_open_water: 'no',
  children_or_pets: 'Yes',
  certified_organic: 'no',
};

describe('a row of a table', () => {
  // The reader of tables and the reader of garden documents are two ways into one engine: both must read the same test.
  it('is stored so that the engine reads the same from the record as from the table', () => {
    const header = Object.keys(sample);
    const cells = Object.values(sample);
    const read = rowReader(header, { today }).read(cells, 1);
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    const { test, place } = rowEntry(header, cells, today);
    const stored = readGarden({ garden: 'g', places: [{ ...place, tests: [test] }] }, { today });
    expect(stored.problems).toEqual([]);
    const fromTable = read.place.tests[0] as unknown as Record<string, unknown>;
    const fromRecord = stored.garden.places[0]?.tests[0] as unknown as Record<string, unknown>;
    for (const [key, value] of Object.entries(fromTable))
      if (key !== 'id' && value !== undefined)
        expect([key, typeof value === 'number' ? Number(value).toPrecision(12) : value]).toEqual([
          key,
          typeof value === 'number' ? Number(fromRecord[key]).toPrecision(12) : fromRecord[key],
        ]);
    expect(stored.garden.places[0]).toMatchObject({
      name: 'North bed',
      target: read.place.target,
      childrenOrPets: true,
      situation: 'open ground',
    });
    expect(stored.garden.places[0]?.plants.map((plant) => plant.name)).toEqual(
      read.place.plants.map((plant) => plant.name),
    );
  });

  it('knows every column that the reader knows', () => {
    for (const column of rowColumns) {
      if (column === 'place') continue;
      const { test, place } = rowEntry([column], ['1'], today);
      expect(Object.keys(test).length + Object.keys(place).length, column).toBeGreaterThan(
        ['date', 'by'].includes(column) ? 2 : 3,
      );
    }
  });

  it('becomes fields of the form and back without a change', () => {
    const { test } = rowEntry(Object.keys(sample), Object.values(sample), today);
    expect(contentOf(draftOf(test))).toEqual(test);
    expect(checkTest(test, today)).toEqual([]);
  });
});

describe('splitting a table', () => {
  it('takes commas, semicolons and tabs, quotes and line ends of any kind (RFC 4180)', () => {
    expect(splitTable('place,ph\r\n"a, b",5\r\n\r\n"say ""hi""",6')).toEqual([
      { cells: ['place', 'ph'], line: 1 },
      { cells: ['a, b', '5'], line: 2 },
      { cells: ['say "hi"', '6'], line: 4 },
    ]);
    expect(splitTable('place;ph\nx;5,3')[1]?.cells).toEqual(['x', '5,3']);
    expect(splitTable('place\tph\nx, y\t5')[1]?.cells).toEqual(['x, y', '5']);
  });

  it('lets an unclosed quote spoil no line but its own', () => {
    expect(splitTable('place,ph\n"lost,5\nb,6').map((each) => each.cells)).toEqual([
      ['place', 'ph'],
      ['"lost,5'],
      ['b', '6'],
    ]);
  });
});

describe('faults', () => {
  it('are told at the field in the words of the form', () => {
    const faults = checkTest({ date: '2027-01-01', by: 'laboratory', ph: { value: 45 } } as never, today);
    const ph = faults.find((fault) => fault.path === 'ph.value');
    expect(ph?.message).toContain('pH is 45');
    const missing = checkTest({ date: '2026-10-01', by: 'laboratory', buffer: { value: 6.2 } } as never, today);
    expect(missing.map((fault) => fault.path)).toEqual(['buffer.kind']);
    const high = checkTest(
      { date: '2026-10-01', by: 'laboratory', buffer: { value: 68, kind: 'smp' } } as never,
      today,
    );
    expect(high.length).toBeGreaterThan(0);
  });
});

import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { readGarden } from './read-garden.ts';

const today = '2026-11-01';
const good = { name: 'Good bed', size: '4 x 8 ft', soil: { texture: 'loam' }, plants: ['tomato'] };
const lab = { date: '2026-09-14', by: 'laboratory', ph: { value: 5.4, in: 'water-1:1' } };
const garden = (...places: unknown[]) => ({ garden: 'Test garden', places });
const bad = (place: Record<string, unknown>) => readGarden(garden({ name: 'Bad bed', ...place }, good), { today });

/** Everything a problem owes the person. */
function namesAll(read: ReturnType<typeof readGarden>, field: RegExp, value: unknown): void {
  const [problem] = read.problems;
  expect(problem?.place).toBe('Bad bed');
  expect(problem?.field).toMatch(field);
  expect(problem?.value).toEqual(value);
  expect(problem?.message.length).toBeGreaterThan(10);
  expect(problem?.fix.length).toBeGreaterThan(10);
  expect(`${problem?.message} ${problem?.fix}`).not.toMatch(/\{\w+\}|undefined|NaN/);
  expect(read.garden.places.map((place) => place.name)).toContain('Good bed');
}

describe('bad entries of a garden document', () => {
  it('a pH of 45', () => {
    const read = bad({ tests: [{ ...lab, ph: { value: 45 } }] });
    namesAll(read, /^tests\[0\]\.ph\.value$/, 45);
    expect(read.problems[0]?.fix).toContain('4.5');
    const place = read.garden.places.find((each) => each.name === 'Bad bed');
    expect(place?.tests).toEqual([]);
    expect(read.skipped.join(' ')).toContain('2026-09-14');
  });
  it('a buffer pH above the buffer itself', () => {
    // Sikora buffer starts at 7.70 (from memory); no soil reads higher.
    const read = bad({ tests: [{ ...lab, buffer: { value: 9.1, kind: 'sikora' } }] });
    namesAll(read, /^tests\[0\]\.buffer\.value$/, 9.1);
  });
  it('a negative depth', () => {
    const read = bad({ depth: '-6 in' });
    namesAll(read, /^depth$/, '-6 in');
    expect(read.garden.places).toHaveLength(1);
    expect(read.skipped).toHaveLength(1);
  });
  it('a depth of nothing', () => namesAll(bad({ depth: '0 cm' }), /^depth$/, '0 cm'));
  it('sand, silt and clay that miss 100 %', () => {
    const read = bad({ soil: { sand: '40 %', silt: '40 %', clay: '40 %' } });
    namesAll(read, /sand/, 'sand 40 %, silt 40 %, clay 40 %');
    expect(read.problems[0]?.message).toContain('120');
  });
  it('sand, silt and clay that miss 100 % in a test', () => {
    const read = bad({ tests: [{ ...lab, sand: '30 %', silt: '30 %', clay: '30 %' }] });
    namesAll(read, /^tests\[0\]/, 'sand 30 %, silt 30 %, clay 30 %');
  });
  it('an unknown plant', () => {
    const read = bad({ plants: ['carrot', 'tomatto'] });
    namesAll(read, /^plants\[1\]$/, 'tomatto');
    expect(read.problems[0]?.fix).toContain('Tomato');
    expect(read.garden.places[0]?.plants.map((plant) => plant.name)).toEqual(['Carrot']);
    expect(read.skipped.join(' ')).toContain('tomatto');
  });
  it('a unit of the wrong kind', () => {
    const read = bad({ size: '20 lb' });
    namesAll(read, /^size$/, '20 lb');
    expect(read.problems[0]?.message).toContain('weight');
  });
  it('a number without a unit', () => namesAll(bad({ depth: '6' }), /^depth$/, '6'));
  it('an unknown field, with the nearest known one', () => {
    const read = bad({ nearOpenWatter: true });
    namesAll(read, /^nearOpenWatter$/, true);
    expect(read.problems[0]?.fix).toContain('nearOpenWater');
    expect(read.garden.places).toHaveLength(2);
  });
  it('an unknown field deep inside a test', () => {
    const read = bad({ tests: [{ ...lab, ph: { value: 5.4, methud: 'x' } }] });
    namesAll(read, /^tests\[0\]\.ph\.methud$/, 'x');
    expect(read.garden.places[0]?.tests[0]?.ph?.value).toBe(5.4);
  });
  it('a day that does not exist, and a day still to come', () => {
    namesAll(bad({ tests: [{ ...lab, date: '2026-02-30' }] }), /^tests\[0\]\.date$/, '2026-02-30');
    namesAll(bad({ tests: [{ ...lab, date: '2027-02-20' }] }), /^tests\[0\]\.date$/, '2027-02-20');
  });
  it('a target upside down', () => namesAll(bad({ target: { low: 7, high: 6 } }), /^target$/, '7 to 6'));
  it('both spellings of one metal', () =>
    namesAll(
      bad({ tests: [{ ...lab, aluminum: '50 ppm', aluminium: '50 ppm' }] }),
      /^tests\[0\]\.aluminium$/,
      '50 ppm',
    ));
  it('an unknown material in an application, told as dangerous to ignore', () => {
    const read = bad({ applications: [{ date: '2026-03-01', material: 'pixie dust', amount: '5 lb' }] });
    namesAll(read, /^applications\[0\]\.material$/, 'pixie dust');
    expect(read.skipped[0]).toContain('before you spread anything');
  });
  it('two places of one name', () => {
    const read = readGarden(garden(good, good), { today });
    expect(read.problems[0]).toMatchObject({ code: 'document.same-name', place: 'Good bed', field: 'name' });
  });
});

describe('documents that are no garden', () => {
  it.each([[undefined], [null], [''], [[]], ['words'], [42], [{}], [{ garden: 'x' }], [{ garden: 'x', places: [] }]])(
    '%j gives one clear problem and no place',
    (document) => {
      const read = readGarden(document, { today });
      expect(read.garden.places).toEqual([]);
      expect(read.problems.length).toBeGreaterThan(0);
      for (const each of read.problems) expect(each.fix).not.toMatch(/\{\w+\}|undefined/);
    },
  );
});

describe('good documents', () => {
  it('takes cations as weight, as charge and for an acre alike', () => {
    // 121.525 mg/kg of magnesium is 1 cmol_c/kg (molar mass 24.305 g, charge 2); 2 lb/acre is 1 mg/kg (NOFA_APP).
    const read = readGarden(
      garden(
        { name: 'a', tests: [{ ...lab, magnesium: '121.525 ppm' }] },
        { name: 'b', tests: [{ ...lab, magnesium: '1 meq/100 g' }] },
        { name: 'c', tests: [{ ...lab, magnesium: '243.05 lb/acre' }] },
      ),
      { today },
    );
    expect(read.problems).toEqual([]);
    for (const place of read.garden.places) expect(place.tests[0]?.magnesium).toBeCloseTo(0.01, 6);
  });
  it('takes aluminum for aluminium, color-kit for colour-kit and yes for true', () => {
    const read = readGarden(
      garden({ name: 'a', nearOpenWater: 'yes', tests: [{ ...lab, by: 'color-kit', aluminum: '89.94 ppm' }] }),
      { today },
    );
    expect(read.problems).toEqual([]);
    expect(read.garden.places[0]).toMatchObject({ nearOpenWater: true, tests: [{ instrument: 'colour-kit' }] });
    expect(read.garden.places[0]?.tests[0]?.aluminium).toBeCloseTo(0.01, 6);
  });
  it('says what it took for granted', () => {
    const read = readGarden(garden({ name: 'a', tests: [lab] }), { today });
    expect(read.choices.map((each) => each.field)).toEqual(
      expect.arrayContaining(['depth', 'size', 'climate', 'finenessSystem']),
    );
  });
  it('reads the third size from two', () => {
    const read = readGarden(garden({ name: 'a', soil: { sand: '40 %', clay: '20 %' } }), { today });
    expect(read.garden.places[0]?.texture?.parts.silt).toBeCloseTo(0.4, 9);
  });
  it('counts an earlier dressing in calcium carbonate', () => {
    // 50 lb/1000 ft² is 244 g/m² (unit_conversions); CCE 90 %, all of it finer than 100 mesh acts.
    const read = readGarden(
      {
        ...garden({ name: 'a', applications: [{ date: '2026-03-01', material: 'my lime', amount: '50 lb/1000 ft2' }] }),
        materials: [{ material: 'calcitic-limestone', name: 'my lime', cce: '90 %', passing: { '100 mesh': '100 %' } }],
      },
      { today },
    );
    expect(read.problems).toEqual([]);
    expect(read.garden.places[0]?.applications[0]?.currency).toBeCloseTo(0.2441 * 0.9, 3);
  });
  it('serves every demo garden without a problem', () => {
    const folder = new URL('../../../../demo/', import.meta.url);
    const files = readdirSync(folder).filter((file) => file.endsWith('.yaml'));
    expect(files).toHaveLength(3);
    for (const file of files) {
      const read = readGarden(parse(readFileSync(new URL(file, folder), 'utf8')), { today });
      expect(read.problems, file).toEqual([]);
      expect(read.garden.name).toContain('nvented');
    }
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nitrogenAcid } from '../forecast/drift.ts';
import { say } from '../units/say.ts';
import { readGarden } from './read-garden.ts';
import { together } from './read-yearly.ts';

const today = '2026-11-01';
const bed = { name: 'Bed', area: '10 m2', soil: { texture: 'loam' }, plants: ['tomato'] };
const read = (place: Record<string, unknown>, head: Record<string, unknown> = {}) =>
  readGarden({ garden: 'Test garden', ...head, places: [{ ...bed, ...place }] }, { today });
const yearly = (place: Record<string, unknown>) => {
  const { garden, problems } = read(place);
  expect(problems).toEqual([]);
  return garden.places[0]?.yearly ?? {};
};

describe('what happens every year', () => {
  it('counts nitrogen by weight for the place or for an area', () => {
    expect(yearly({ feeds: [{ form: 'urea', nitrogen: '100 g' }] }).nitrogen?.amount).toBeCloseTo(0.01, 9);
    expect(yearly({ feeds: [{ form: 'nitrate', nitrogen: '10 g/m2' }] }).nitrogen).toEqual({
      amount: 0.01,
      charge: -1,
    });
  });
  it('knows fertilizers by any of their names, with the nitrogen they hold', () => {
    for (const material of ['ammonium-sulfate', 'Ammonium sulfate', 'sulphate of ammonia']) {
      const { nitrogen } = yearly({ feeds: [{ material, amount: '1 kg' }] });
      // 21 % nitrogen (ANR174), all of it ammonium.
      expect(nitrogen?.amount, material).toBeCloseTo(0.021, 6);
      expect(Math.abs((nitrogen?.charge ?? 0) - 1), material).toBeLessThan(0.05);
    }
  });
  it('adds feeds up so that their acid adds up', () => {
    const feed = fc.record({
      amount: fc.double({ min: 1e-4, max: 0.1, noNaN: true }),
      charge: fc.integer({ min: -1, max: 1 }),
    });
    fc.assert(
      fc.property(fc.array(feed, { minLength: 1 }), fc.double({ min: 0, max: 1, noNaN: true }), (feeds, leached) => {
        const all = together(feeds) ?? expect.fail();
        const apart = feeds.reduce((sum, { amount, charge }) => sum + amount * nitrogenAcid(charge, leached), 0);
        expect(all.amount * nitrogenAcid(all.charge, leached)).toBeCloseTo(apart, 9);
      }),
    );
  });
  it('takes the base of a harvest from the table and says that it is from memory', () => {
    const result = read({ harvest: [{ of: 'leafy vegetables', weight: '4 kg/m2' }] });
    // 2-5 kg CaCO3 a tonne fresh (TEXT, from memory): the middle is 3.5.
    expect(result.garden.places[0]?.yearly?.crop).toBeCloseTo(0.014, 9);
    const said = result.choices.find(({ field }) => field === 'harvest')?.message;
    expect(said && say(said, 'metric')).toMatch(/14 g.*memory.*TEXT/);
    expect(yearly({ harvest: [{ of: 'grass hay', weight: '10 kg', returned: 'yes' }] }).crop).toBe(0);
  });
  it('takes compost by weight, volume or depth', () => {
    const base = (amount: string) => yearly({ compost: [{ material: 'compost', amount }] }).compost ?? 0;
    // Garden compost 2 % of dry mass, 45 % water, 0.6 kg/L (almanac `materials`, from memory).
    expect(base('6 kg/m2')).toBeCloseTo(6 * 0.55 * 0.02, 9);
    expect(base('60 kg')).toBeCloseTo(base('6 kg/m2'), 9);
    expect(base('100 L')).toBeCloseTo(base('1 cm'), 9);
    expect(base('1 cm')).toBeCloseTo(base('6 kg/m2'), 9);
  });
  it.each([
    [{ feeds: [{ material: 'ureea', amount: '1 kg' }] }, /^feeds\[0\]\.material$/, /urea/],
    [{ feeds: [{ material: 'potassium chloride', amount: '1 kg' }] }, /^feeds\[0\]\.material$/, /applications/],
    [{ feeds: [{ material: 'poultry litter', amount: '1 kg' }] }, /^feeds\[0\]\.material$/, /compost/],
    [{ feeds: [{ amount: '1 kg' }] }, /^feeds\[0\]\.material$/, /urea/],
    [{ feeds: [{ form: 'urea' }] }, /^feeds\[0\]\.nitrogen$/, /10 g/],
    [{ feeds: [{ form: 'urea', nitrogen: '10 g/m2', amount: '1 kg' }] }, /^feeds\[0\]\.amount$/, /one of/],
    [{ feeds: [{ form: 'urea', nitrogen: '10 kg/m2' }] }, /^feeds\[0\]\.nitrogen$/, /100 g/],
    [{ feeds: [{ form: 'guano', nitrogen: '10 g' }] }, /^feeds\[0\]\.form$/, /organic/],
    [{ feeds: 'urea' }, /^feeds$/, /./],
    [{ harvest: [{ of: 'leaves', weight: '1 kg' }] }, /^harvest\[0\]\.of$/, /leafy vegetables/],
    [{ harvest: [{ of: 'grass hay' }] }, /^harvest\[0\]\.weight$/, /lb/],
    [{ compost: [{ material: 'dolomite', amount: '1 kg' }] }, /^compost\[0\]\.material$/, /applications/],
    [{ compost: [{ material: 'compost', amount: '-1 kg' }] }, /^compost\[0\]\.amount$/, /./],
    [{ compost: [{ material: 'compost', amount: '2 m' }] }, /^compost\[0\]\.amount$/, /200 kg/],
  ])('explains %j and plans the place without it', (place, field, fix) => {
    const { problems, garden, skipped } = read(place);
    expect(problems).toHaveLength(1);
    expect(problems[0]?.place).toBe('Bed');
    expect(problems[0]?.field).toMatch(field);
    expect(problems[0]?.fix).toMatch(fix);
    expect(`${problems[0]?.message} ${problems[0]?.fix}`).not.toMatch(/\{\w+\}|undefined|NaN/);
    expect(garden.places).toHaveLength(1);
    if (!/^feeds$/.test(problems[0]?.field ?? '')) expect(skipped.join(' ')).toContain('forecast does not know');
  });
});

describe('weather', () => {
  const months = (value: number | string) => Array.from({ length: 12 }, () => value);
  it('takes air, rain and latitude', () => {
    const { garden, problems } = read({}, { airTemperature: months(9), rain: months('80 mm'), latitude: 52 });
    expect(problems).toEqual([]);
    expect(garden.settings.weather).toEqual({ air: months(9), rain: months(0.08), latitude: 52 });
  });
  it('hands the climate on to the forecast', () => {
    expect(read({}, { climate: 'Mediterranean' }).garden.settings.weather).toEqual({ climate: 'Mediterranean' });
  });
  it('turns a climate of the north by half a year for the south', () => {
    const { settings } = read({}, { climate: 'maritime', hemisphere: 'south' }).garden;
    const north = read({}, { climate: 'maritime' }).garden.settings;
    expect(settings.soilTemperature?.[0]).toBe(north.soilTemperature?.[6]);
    expect(settings.weather?.latitude).toBeLessThan(0);
    expect(settings.weather?.air?.[0]).toBeGreaterThan(settings.weather?.air?.[6] ?? Number.NaN);
    expect(read({}, { latitude: -40 }).garden.settings.hemisphere).toBe('south');
  });
  it.each([
    [{ airTemperature: months(9).slice(1) }, 'airTemperature'],
    [{ airTemperature: months('warm') }, 'airTemperature[0]'],
    [{ rain: [...months('80 mm').slice(1), '80 kg'] }, 'rain[11]'],
    [{ rain: [...months('80 mm').slice(1), '80 m'] }, 'rain[11]'],
    [{ latitude: 100 }, 'latitude'],
    [{ latitude: 40, hemisphere: 'south' }, 'latitude'],
  ])('explains %j', (head, field) => {
    const { problems, garden, skipped } = read({}, head);
    expect(problems[0]?.field).toBe(field);
    expect(garden.places).toHaveLength(1);
    expect(skipped.length).toBeGreaterThan(0);
  });
});

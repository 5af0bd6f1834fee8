import { isSource } from '@sorrel/almanac/sources';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createRecorder, gaps } from '../../derivation/derivation.ts';
import type { SoilTest, TextureClass } from '../../evidence/soil-test.ts';
import { ACID_PER_SULFUR } from '../../materials/sulfur-equivalent.ts';
import { span } from '../implied.ts';
import type { MethodInput, RequirementMethod } from '../method.ts';
import { capacityAsCharge, fromCec, KG_PER_M2, lowerMethods, sulfurPublished } from './index.ts';
import { tableMethod } from './table-method.ts';

const TEXTURES: TextureClass[] = ['sand', 'loamy sand', 'sandy loam', 'loam', 'silt loam', 'clay loam', 'clay'];
const byId = (id: string) => lowerMethods.find((method) => method.id === id) as RequirementMethod;

interface Place {
  present: number;
  target: number;
  texture?: TextureClass;
  mass?: number;
  region?: string;
  medium?: MethodInput['medium'];
  test?: Partial<SoilTest>;
}

function place({ present, target, texture, mass = 198.12, region, medium = 'mineral', test }: Place): MethodInput {
  return {
    present: { mean: present, sd: 0.15 },
    targetPh: target,
    layer: { depth: 0.1524, bulkDensity: mass / 0.1524, coarseFragments: 0, mass },
    medium,
    test: {
      id: 't',
      date: '2026-03-01',
      instrument: 'laboratory',
      depth: 0.15,
      ...(texture === undefined ? {} : { texture }),
      ...test,
    },
    ...(region === undefined ? {} : { region }),
  };
}

function reading(method: RequirementMethod, input: MethodInput) {
  const outcome = method.read(input);
  if (outcome.state !== 'reading') throw new Error(`${method.id}: ${JSON.stringify(outcome)}`);
  return outcome.reading;
}

/** Mean capacity a reading stands for over its own stretch, mmol H+/kg/pH. */
const beta = (method: RequirementMethod, input: MethodInput) => {
  const { logBeta0, methodTargetPh } = reading(method, input);
  const { mean } = input.present;
  return (capacityAsCharge(Math.exp(logBeta0)) * 1000 * span(methodTargetPh, mean)) / (mean - methodTargetPh);
};

const anyPlace = fc
  .record({
    present: fc.double({ min: 4.2, max: 8.4, noNaN: true }),
    target: fc.double({ min: 4, max: 7, noNaN: true }),
    texture: fc.constantFrom(...TEXTURES),
    mass: fc.double({ min: 40, max: 400, noNaN: true }),
    region: fc.constantFrom('Michigan', 'Maine', 'Quebec', 'Nowhere'),
    test: fc.constantFrom<Partial<SoilTest>>({}, { carbonate: 0 }, { cec: 0.1 }, { vinegarFizz: 'mild' }),
  })
  .map(place);
const anyMethod = fc.constantFrom(...lowerMethods);

describe('methods that lower pH', () => {
  it('have names of their own and sources that resolve', () => {
    expect(new Set(lowerMethods.map((method) => method.id)).size).toBe(lowerMethods.length);
    for (const method of lowerMethods) {
      expect(method.sources.length, method.id).toBeGreaterThan(0);
      for (const source of method.sources) expect(isSource(source), source).toBe(true);
      expect(method.sdLog.matching, method.id).toBeLessThanOrEqual(method.sdLog.foreign);
    }
  });

  it('ask for nothing when the pH is at or below the target', () => {
    fc.assert(
      fc.property(anyMethod, anyPlace, (method, input) => {
        const outcome = method.read({ ...input, targetPh: input.present.mean });
        if (outcome.state === 'reading') expect(outcome.reading.pure).toBeCloseTo(0, 12);
        if (method !== fromCec) expect(outcome.state).not.toBe('reading');
      }),
    );
  });

  it('give a figure that is finite, sours, and grows straight with the mass of soil', () => {
    fc.assert(
      fc.property(anyMethod, anyPlace, (method, input) => {
        const outcome = method.read(input);
        if (outcome.state !== 'reading' || input.targetPh >= input.present.mean) return;
        const twice = { ...input, layer: { ...input.layer, mass: 2 * input.layer.mass } };
        const { logBeta0, sdLog, pure } = outcome.reading;
        expect(Number.isFinite(logBeta0)).toBe(true);
        expect(sdLog).toBeGreaterThan(0.3);
        expect(pure).toBeLessThan(0);
        expect(reading(method, twice).pure).toBeCloseTo(2 * pure, 9);
        expect(reading(method, twice).logBeta0).toBe(logBeta0);
      }),
    );
  });

  it('never ask for less to go further', () => {
    fc.assert(
      fc.property(anyMethod, anyPlace, fc.double({ min: 0.1, max: 1, noNaN: true }), (method, input, further) => {
        const near = method.read(input);
        const far = method.read({ ...input, targetPh: input.targetPh - further });
        if (near.state === 'reading' && far.state === 'reading' && input.targetPh < input.present.mean)
          expect(far.reading.pure).toBeLessThanOrEqual(near.reading.pure + 1e-12);
      }),
    );
  });

  it('reads no texture above pH 7.2 until somebody has looked for free lime, and none where there is some', () => {
    fc.assert(
      fc.property(
        anyMethod,
        fc.constantFrom(...TEXTURES),
        fc.double({ min: 7.21, max: 8.5, noNaN: true }),
        (m, t, ph) => {
          const facts = { present: ph, target: 6.5, texture: t };
          expect(m.read(place(facts)).state).not.toBe('reading');
          for (const test of [{ carbonate: 0.02 }, { vinegarFizz: 'vigorous' }, { acidFizz: 'strong' }] as const)
            expect(m.read(place({ ...facts, test })).state).not.toBe('reading');
          // Vinegar that stays silent proves nothing.
          expect(m.read(place({ ...facts, test: { vinegarFizz: 'silent' } })).state).not.toBe('reading');
        },
      ),
    );
    const tested = place({ present: 7.5, target: 6.5, texture: 'loam', test: { acidFizz: 'none' } });
    expect(byId('lower-kansas-newer').read(tested).state).toBe('reading');
  });

  it('show their working without a gap', () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(anyMethod, anyPlace, (method, input) => {
        const recorder = createRecorder();
        const outcome = method.read(input, recorder);
        if (outcome.state !== 'reading') return;
        seen.add(method.id);
        expect(gaps(recorder.derivation())).toEqual([]);
        expect(recorder.derivation().steps.at(-1)?.value).toBe(outcome.reading.logBeta0);
      }),
      { numRuns: 3000, seed: 7 },
    );
    expect(seen.size).toBeGreaterThan(8);
  });
});

describe('readings', () => {
  // Capacities recomputed from the tables for 15.24 cm at 1.3 g/cm³ (acidification note, derived), mmol/kg/pH.
  it.each([
    ['lower-ontario', 'sand', 6, 5, 11.0],
    ['lower-ontario', 'loam', 6, 5, 34.6],
    ['lower-michigan-state', 'clay', 7, 4.5, 54.1],
    ['lower-tennessee', 'silt loam', 6.5, 5.5, 30.7],
    ['lower-extension-blueberry', 'sandy loam', 6, 5, 15.4],
    ['lower-seven-inch', 'loam', 6, 5, 42.2],
    ['lower-seven-inch', 'sand', 7, 6, 9.2],
  ] as const)('%s on %s, %s to %s: %s mmol/kg/pH', (id, texture, from, to, published) => {
    expect(beta(byId(id), place({ present: from, target: to, texture }))).toBeCloseTo(published, 0);
  });

  it('give the printed dose back on the printed soil, and half of it on half the soil', () => {
    const method = byId('lower-michigan-state');
    const input = place({ present: 6, target: 4.5, texture: 'loam', mass: 198.12 });
    const printed = sulfurPublished('MSU-R', 'loam', 6, 4.5)?.low ?? 0;
    expect(-reading(method, input).pure / ACID_PER_SULFUR).toBeCloseTo(printed, 9);
    const light = place({ present: 6, target: 4.5, texture: 'loam', mass: 99.06 });
    expect(-reading(method, light).pure / ACID_PER_SULFUR).toBeCloseTo(printed / 2, 9);
  });

  // CEC 12 to 17 is Michigan's clay loam; 3.4 x 10 = 34 is its loam (MSU-R, derived). About 100 lb S/acre per unit per meq.
  it('reads a CEC as 3.4 times itself, upwards and downwards alike', () => {
    const down = place({ present: 6, target: 5, test: { cec: 0.1 } });
    const up = place({ present: 5, target: 6, test: { cec: 0.1 } });
    expect(beta(fromCec, down)).toBeCloseTo(34, 9);
    expect(reading(fromCec, up).logBeta0).toBeCloseTo(reading(fromCec, down).logBeta0, 12);
    expect(reading(fromCec, up).pure).toBeCloseTo(-reading(fromCec, down).pure, 12);
    const sulfur = -reading(fromCec, down).pure / ACID_PER_SULFUR / KG_PER_M2['lb/acre'];
    expect(sulfur / 10).toBeGreaterThan(90);
    expect(sulfur / 10).toBeLessThan(105);
  });

  it('does not trust a CEC swollen by free lime, nor an effective one', () => {
    const limy = place({ present: 7.8, target: 6.5, test: { cec: 0.3, cecBasis: 'summed cations', carbonate: 0.02 } });
    expect(fromCec.read(limy)).toMatchObject({ state: 'outside', reason: { code: 'lower.cec-inflated' } });
    const effective = place({ present: 6, target: 5, test: { cec: 0.05, cecBasis: 'effective' } });
    expect(fromCec.read(effective)).toMatchObject({ state: 'outside', reason: { code: 'lower.cec-effective' } });
  });

  it('keeps special crops to their own country, and pots and peat out', () => {
    const maine = place({ present: 5.2, target: 4.2, region: 'Maine' });
    expect(reading(byId('lower-wild-blueberry'), maine).published.value).toBeCloseTo(1000, 6);
    expect(byId('lower-wild-blueberry').read(place({ present: 5.2, target: 4.2 })).state).toBe('not given');
    const peat = place({ present: 6, target: 5, texture: 'loam', medium: 'organic' });
    expect(byId('lower-ontario').read(peat).state).toBe('outside');
    expect(byId('lower-seven-inch').read(peat).state).toBe('reading');
    for (const method of lowerMethods)
      expect(method.read(place({ present: 6.5, target: 5, texture: 'loam', medium: 'soilless' })).state).not.toBe(
        'reading',
      );
  });

  it('stops at the ends of the table and says so', () => {
    const method = byId('lower-tennessee');
    expect(reading(method, place({ present: 6.5, target: 4.5, texture: 'loam' })).methodTargetPh).toBe(5.5);
    expect(method.read(place({ present: 5.5, target: 4.5, texture: 'loam' }))).toMatchObject({
      reason: { code: 'lower.below-table' },
    });
    expect(byId('lower-ontario').read(place({ present: 7.1, target: 5, texture: 'loam' }))).toMatchObject({
      reason: { code: 'lower.above-table' },
    });
    expect(byId('lower-ontario').read(place({ present: 6, target: 5, texture: 'clay' }))).toMatchObject({
      reason: { code: 'lower.no-column' },
    });
  });

  it('is silent for a publication without rows', () => {
    const empty = tableMethod({
      id: 'x',
      title: 'x',
      publication: 'nobody',
      regions: [],
      lowest: 4,
      highest: 7,
      sdLog: { matching: 0.5, foreign: 0.5 },
      domain: '',
      basis: 'read',
    });
    expect(empty.read(place({ present: 6, target: 5, texture: 'loam' })).state).toBe('outside');
  });
});

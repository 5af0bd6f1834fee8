import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createRecorder, gaps } from '../derivation/derivation.ts';
import type { BufferMethod, SoilTest } from '../evidence/soil-test.ts';
import { baseContent, solidCurve } from '../soil/buffer-curve.ts';
import type { Layer } from '../soil/soil.ts';
import * as lime from './index.ts';
import type { MethodInput, Reading, RequirementMethod } from './method.ts';
import { FURROW_SLICE_DENSITY } from './published-units.ts';

const layerOf = (depth: number, bulkDensity = FURROW_SLICE_DENSITY): Layer => ({
  depth,
  bulkDensity,
  coarseFragments: 0,
  mass: depth * bulkDensity,
});
const blank: SoilTest = { id: 't', date: '2026-03-01', instrument: 'laboratory', depth: 0.15 };
const inputOf = (test: Partial<SoilTest>, rest: Partial<MethodInput> = {}): MethodInput => ({
  present: { mean: 5.2, sd: 0.1 },
  targetPh: 6.5,
  layer: layerOf(0.15),
  medium: 'mineral',
  test: { ...blank, ...test },
  ...rest,
});
const buffer = (method: BufferMethod, value: number) => ({ buffer: { method, value } });
const loam = { name: 'loam', parts: { sand: 0.4, silt: 0.4, clay: 0.2 }, basis: 'class' } as const;

/** One case a method reads, with a knob: a larger figure means a more resistant soil. */
const cases: readonly (readonly [RequirementMethod, (knob: number) => MethodInput])[] = [
  [lime.osuSikora, (k) => inputOf(buffer('sikora', 6.6 - 1.5 * k))],
  [lime.smpTristate, (k) => inputOf(buffer('smp', 6.7 - 1.7 * k))],
  [lime.smpTablePure, (k) => inputOf(buffer('smp', 6.7 - 1.7 * k))],
  [lime.smpTableAgGround, (k) => inputOf(buffer('smp', 6.7 - 1.7 * k))],
  [lime.kansas, (k) => inputOf(buffer('smp', 6.9 - k))],
  [lime.adamsEvans, (k) => inputOf(buffer('adams-evans', 7.95 - 0.5 * k))],
  [lime.ncMehlich, (k) => inputOf({ acidityByVolume: 5 + 40 * k })],
  [lime.mehlich1976, (k) => inputOf({ acidityByVolume: 5 + 40 * k })],
  [lime.psuMehlich, (k) => inputOf({ acidity: 0.045 + 0.1 * k })],
  [lime.psuTurf, (k) => inputOf({ acidity: 0.065 + 0.15 * k })],
  [lime.ugaLbc, (k) => inputOf({ limeBufferCapacity: { value: 2e-4 + 3e-4 * k, kind: '30 min' } })],
  [lime.kamprath, (k) => inputOf({ aluminium: 0.005 + 0.03 * k }, { targetPh: 5.6 })],
  [lime.cochrane, (k) => inputOf({ aluminium: 0.005 + 0.03 * k, calcium: 0.01, magnesium: 0.004 }, { targetPh: 5.6 })],
  [lime.brAlCaMg, (k) => inputOf({ aluminium: 0.005 + 0.03 * k, calcium: 0.008, magnesium: 0.003 }, { targetPh: 5.6 })],
  [lime.brBaseSaturation, (k) => inputOf({ cec: 0.06 + 0.1 * k, cecBasis: 'pH 7', baseSaturation: 0.4 })],
  [
    lime.nswEcec,
    (k) => inputOf({ cec: 0.02 + 0.1 * k, cecBasis: 'effective', ph: { value: 4.5, method: 'cacl2-0.01M' } }),
  ],
  [lime.ptfCurtinTrolove, (k) => inputOf({}, { texture: loam, organicCarbon: 0.005 + 0.05 * k })],
  [
    lime.ptfWong,
    (k) => inputOf({ cec: 0.02 }, { texture: { ...loam, name: 'sand' }, organicCarbon: 0.005 + 0.05 * k }),
  ],
  [
    lime.textureOnly,
    (k) => inputOf({}, { texture: { ...loam, parts: { sand: 0, silt: 1 - k, clay: k }, basis: 'jar' } }),
  ],
  [
    lime.printedRate,
    (k) => inputOf({ printedRate: { rate: 0.2 + k, depth: 0.15, targetPh: 6.5, neutralisingValue: 1 } }),
  ],
];
const fixed: readonly (readonly [RequirementMethod, MethodInput])[] = [
  [lime.ukFactor, inputOf({}, { texture: loam })],
  [lime.gardenTables, inputOf({}, { texture: loam })],
  [lime.peatMix, inputOf({}, { medium: 'soilless', layer: layerOf(0.2, 150) })],
  [lime.compostBed, inputOf({}, { medium: 'mix' })],
  [lime.tristateOrganic, inputOf({}, { medium: 'organic', present: { mean: 4.8, sd: 0.1 }, layer: layerOf(0.2, 300) })],
];
const knob = fc.double({ min: 0, max: 1, noNaN: true });

function reading(method: RequirementMethod, input: MethodInput): Reading {
  const outcome = method.read(input);
  if (outcome.state !== 'reading') throw new Error(`${method.id}: ${JSON.stringify(outcome)}`);
  return outcome.reading;
}
const everyCase = [...cases.map(([method, make]) => [method, make(0.5)] as const), ...fixed];

describe('every method', () => {
  it('is tried here', () => {
    const tried = new Set(everyCase.map(([method]) => method.id));
    const upward = lime.methods.filter((method) => !lime.lowerMethods.includes(method));
    expect(upward.map((method) => method.id).filter((id) => !tried.has(id))).toEqual([]);
  });

  it.each(cases.map(([method, make]) => [method.id, method, make] as const))(
    '%s: a more resistant figure never asks for less, and nothing is ever negative',
    (_, method, make) => {
      fc.assert(
        fc.property(knob, knob, (a, b) => {
          const [low, high] = a < b ? [a, b] : [b, a];
          const [less, more] = [reading(method, make(low)), reading(method, make(high))];
          expect(less.pure).toBeGreaterThanOrEqual(0);
          expect(less.published.value).toBeGreaterThan(0);
          expect(more.pure).toBeGreaterThanOrEqual(less.pure * (1 - 1e-9));
          expect(more.logBeta0).toBeGreaterThanOrEqual(less.logBeta0 - 1e-9);
        }),
      );
    },
  );

  it.each(everyCase.map(([method, input]) => [method.id, method, input] as const))(
    '%s: reads the same soil whatever depth is treated, and asks in proportion to it',
    (_, method, input) => {
      fc.assert(
        fc.property(fc.double({ min: 0.05, max: 0.4, noNaN: true }), (depth) => {
          const shallow = reading(method, { ...input, layer: layerOf(0.1, input.layer.bulkDensity) });
          const deep = reading(method, { ...input, layer: layerOf(depth, input.layer.bulkDensity) });
          expect(deep.logBeta0).toBeCloseTo(shallow.logBeta0, 9);
          expect(deep.pure).toBeCloseTo((shallow.pure * depth) / 0.1, 9);
        }),
      );
    },
  );

  it.each(everyCase.map(([method, input]) => [method.id, method, input] as const))(
    '%s: never falls when the target rises',
    (_, method, input) => {
      const asked = [5.6, 5.8, 6, 6.2, 6.4, 6.6, 6.8, 7].map((targetPh) => {
        const outcome = method.read({ ...input, targetPh });
        return outcome.state === 'reading' ? outcome.reading.pure : undefined;
      });
      const known = asked.filter((pure) => pure !== undefined);
      for (const [index, pure] of known.entries()) expect(pure).toBeGreaterThanOrEqual((known[index - 1] ?? 0) - 1e-9);
    },
  );

  it.each(everyCase.map(([method, input]) => [method.id, method, input] as const))(
    '%s: leaves a derivation without gaps, and the same figure as without one',
    (_, method, input) => {
      const recorder = createRecorder();
      const told = method.read(input, recorder);
      expect(gaps(recorder.derivation())).toEqual([]);
      expect(told).toEqual(method.read(input));
    },
  );

  it('puts back what it took: the curve it implies asks its own figure again', () => {
    for (const [method, input] of everyCase) {
      const { logBeta0, methodTargetPh, pure } = reading(method, input);
      const curve = solidCurve(Math.exp(logBeta0), 0.1);
      const again = (baseContent(curve, methodTargetPh) - baseContent(curve, input.present.mean)) * input.layer.mass;
      // Methods that give a capacity hold it constant over their stretch; the curve bends a little.
      const exact = method.direction === 'raise' && method.kind !== 'medium';
      if (exact) expect(again, method.id).toBeCloseTo(pure, 9);
      else expect(Math.abs(again / pure - 1), method.id).toBeLessThan(0.12);
    }
  });

  it('stays silent without its evidence', () => {
    for (const [method] of cases) expect(method.read(inputOf({})), method.id).toEqual({ state: 'not given' });
  });

  it('says why, when the pH has passed its targets or its figures', () => {
    const past = (method: RequirementMethod, input: MethodInput) =>
      method.read({
        ...input,
        present: { mean: 7.3, sd: 0.1 },
        test: { ...input.test, ph: { value: 7.3, method: 'water-1:1' } },
      }).state;
    for (const [method, make] of cases)
      if (method.direction === 'raise') expect(past(method, make(0.5)), method.id).toBe('outside');
    expect(lime.osuSikora.read(inputOf(buffer('sikora', 6.9), { targetPh: 6 }))).toMatchObject({
      reason: { code: 'requirement.outside-zero' },
    });
    expect(lime.kansas.read(inputOf(buffer('smp', 5.5)))).toMatchObject({ state: 'outside' });
    expect(lime.kamprath.read(inputOf({ aluminium: 0.02 }))).toMatchObject({
      reason: { code: 'requirement.outside-target' },
    });
    expect(lime.brBaseSaturation.read(inputOf({ cec: 0.1, baseSaturation: 0.5 }))).toMatchObject({
      reason: { code: 'requirement.outside-cec' },
    });
  });

  it('never reads a buffer pH in the table of another buffer', () => {
    const others: readonly BufferMethod[] = [
      'sikora-2',
      'moore-sikora',
      'woodruff',
      'modified-woodruff',
      'modified-mehlich',
    ];
    for (const method of lime.methods)
      for (const other of others) expect(method.read(inputOf(buffer(other, 6.2))).state, method.id).not.toBe('reading');
    expect(lime.adamsEvans.read(inputOf(buffer('smp', 6.2))).state).toBe('not given');
    expect(lime.osuSikora.read(inputOf(buffer('mehlich', 6.2))).state).toBe('not given');
  });

  it('counts a figure as foreign away from home, in another buffer and in a mix', () => {
    const spread = (test: Partial<SoilTest>, medium: MethodInput['medium'] = 'mineral') =>
      reading(lime.osuSikora, inputOf(test, { medium })).calibrationSd;
    expect(spread({ ...buffer('sikora', 6.2), region: 'oregon' })).toBe(0.3);
    expect(spread({ ...buffer('sikora', 6.2), region: 'Maine' })).toBe(0.45);
    expect(spread(buffer('sikora', 6.2))).toBe(0.45);
    expect(spread({ ...buffer('smp', 6.2), region: 'Oregon' })).toBe(0.45);
    expect(spread({ ...buffer('sikora', 6.2), region: 'Oregon' }, 'mix')).toBe(0.45);
  });

  it('lets a small gap say little, because the pH’s own error fills it', () => {
    const at = (mean: number) =>
      reading(lime.osuSikora, inputOf(buffer('sikora', 6.2), { present: { mean, sd: 0.1 } }));
    expect(at(6.3).sdLog).toBeGreaterThan(at(5.3).sdLog * 1.3);
  });

  it('takes the allowance out of a printed rate by the laboratory’s region', () => {
    expect(lime.printedAllowance(undefined, 'north carolina')).toBeCloseTo(2.24, 9);
    expect(lime.printedAllowance(undefined, 'Oregon')).toBe(1);
    expect(lime.printedAllowance('smp-tristate', undefined)).toBe(1.4);
    expect(lime.printedAllowance(undefined, 'Nowhere')).toBe(1);
  });
});

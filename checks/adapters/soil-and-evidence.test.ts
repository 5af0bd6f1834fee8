import { describe, expect, it } from 'vitest';
import type { CheckCase } from '../adapter.ts';
import { soilAndEvidence } from './soil-and-evidence.ts';

const run = (inputs: CheckCase['inputs'], expected: CheckCase['expected'], source = '') => {
  const check: CheckCase = { id: '', title: '', inputs, expected, tolerance: '', source, basis: '', note: '' };
  return soilAndEvidence.find((one) => one.accepts(check))?.compute(check);
};

describe('adapters of soil and evidence', () => {
  it('tell equations of the same shape apart by their source', () => {
    expect(run({ pHw: 5.5 }, { pHCa: 0 }, 'DPIRD_PH')?.pHCa).toBeCloseTo(4.8, 9);
    expect(run({ pHw: 5.5 }, { pHCa: 0 }, 'CONDAV')?.pHCa).toBeCloseTo(4.875, 9);
    // Kabala 2016: 0.14 + 0.99·6; Takamoto 2023: 0.80·6 + 1.32.
    expect(run({ pHw: 6 }, { pHw5: 0 }, 'KAB16')?.pHw5).toBeCloseTo(6.08, 9);
    expect(run({ pHw: 6 }, { pHw5: 0 }, 'TAK23')?.pHw5).toBeCloseTo(6.12, 9);
    expect(run({ 'pHw2.5': 6 }, { pHw1: 0 }, 'TAK23')?.pHw1).toBeCloseTo(5.91, 9);
    expect(run({ pHKCl: 5 }, { pHKCl5: 0 }, 'KAB16')?.pHKCl5).toBeCloseTo(5.09, 9);
  });

  it('find the equation by the soil and the salt', () => {
    expect(run({ pHKCl: 5, OM_pct: 3 }, { pHw: 0 }, 'HB-PTF')?.pHw).toBeCloseTo(0.9843 + 4.5015 + 0.02985, 6);
    expect(run({ pHKCl: 4, soil: 'peat' }, { pHw: 0 }, 'HB-PTF')?.pHw).toBeCloseTo(1.3235 + 3.4324, 6);
    // Takamoto 2023: 0.93·6 + 1.75·0.1 − 0.44.
    expect(run({ pHw: 6, EC: 0.1 }, { pHCa: 0 }, 'TAK23')?.pHCa).toBeCloseTo(5.315, 9);
    expect(run({ pHCa: 5.4 }, { pHw: 0 }, 'CONDAV')?.pHw).toBeCloseTo(6, 9);
  });

  it('answer in the code, the word or the system that is asked for', () => {
    const sizes = { sand: 40, silt: 40, clay: 20 };
    expect(run(sizes, { class: 'L' })).toEqual({ class: 'L' });
    expect(run(sizes, { class: 'loam' })).toEqual({ class: 'loam' });
    expect(run({ sand: 0.4, silt: 0.4, clay: 0.2 }, { class: 'loam' })).toEqual({ class: 'loam' });
    expect(run({ ...sizes, system: 'UK' }, { class: 'clay loam' })).toEqual({ class: 'clay loam' });
    expect(run({ ribbon_in: 1.5, feel: 'gritty' }, { class: 'sandy clay loam' })).toEqual({ class: 'sandy clay loam' });
  });

  it('know the other words and figures of the tables', () => {
    expect(run({ appearance: 'readily seen' }, { caco3_pct: [] })).toEqual({ caco3_pct: [6, 10] });
    expect(run({ appearance: 'none' }, { caco3_pct: [] })).toEqual({ caco3_pct: [0, 0] });
    expect(run({ set: 'NIST 4.01/6.86/9.18', temp_C: 10 }, { '6.86': 0 })).toEqual({ '6.86': 6.92 });
    expect(run({ temp_C: 25 }, { slope_mV: 0 })?.slope_mV).toBeCloseTo(59.16, 2);
    expect(run({ EC_mS_cm: 1.3, method: 'SME' }, { class: '' })).toEqual({ class: 'low' });
    expect(run({ core_SD: 0.4, half_width: 0.1 }, { cores_95: 0, cores_90: 0 })).toEqual({
      cores_95: 62,
      cores_90: 44,
    });
    expect(run({ sd: 0.4, E: 0.1, confidence: 0.9 }, { n: 0 })).toEqual({ n: 44 });
    expect(run({ sd: 0.15, z: 1.96 }, { detectable_change: 0 })?.detectable_change).toBeCloseTo(0.416, 3);
    expect(run({ pH: 5.7, season: 'fall', drought: true }, { spring_pH: 0 })?.spring_pH).toBeCloseTo(6.2, 9);
    expect(run({ lime_g_L: [0, 1.2, 2.4], compost_pct: 40 }, { pH: [] })).toEqual({ pH: [6.7, 6.9, 7] });
    expect(run({ depth_cm: 5, temp_C: 20 }, { 'silt_0.002mm_h': 0 })?.['silt_0.002mm_h']).toBeCloseTo(3.87, 2);
  });

  it('leave other shapes alone', () => {
    expect(run({ pH: 5.5, target: 6.5 }, { lime: 0 })).toBeUndefined();
    expect(run({ temp_C: 25, pCO2_atm: 0.01 }, { pH: 0 })).toBeUndefined();
  });
});

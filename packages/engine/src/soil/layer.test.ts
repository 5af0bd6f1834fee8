import { describe, expect, it } from 'vitest';
import { createRecorder, gaps } from '../derivation/derivation.ts';
import { bulkDensityOf } from './bulk-density.ts';
import { layerOf } from './layer.ts';
import { capacityByCarbonAndClay, leastCapacity } from './least-capacity.ts';
import { textureOf } from './texture-of.ts';

describe('bulkDensityOf', () => {
  it('takes a measured figure before all others', () => {
    expect(bulkDensityOf({ medium: 'mineral', bulkDensity: 1111, texture: 'sand' })).toMatchObject({
      value: 1111,
      how: 'measured',
    });
  });

  it('makes dug ground lighter than the calculated set, and leaves a lawn as printed', () => {
    // Calculated set: loam 1.43, sandy loam 1.51 (BD-TEX), 0.1 to 0.3 too dense for dug beds (BD-MN: sandy soil 1.1 to 1.3).
    expect(bulkDensityOf({ medium: 'mineral', texture: 'loam' }).value).toBeCloseTo(1230, 6);
    expect(bulkDensityOf({ medium: 'mineral', texture: 'loam', dug: false }).value).toBeCloseTo(1430, 6);
    expect(bulkDensityOf({ medium: 'mineral', texture: 'sandy loam' }).value).toBeCloseTo(1310, 6);
  });

  it('falls with organic matter down to organic ground', () => {
    const at = (organicMatter: number) => bulkDensityOf({ medium: 'mineral', texture: 'loam', organicMatter }).value;
    expect(at(0.05)).toBe(at(0));
    expect(at(0.1)).toBeLessThan(at(0.05));
    expect(at(0.2)).toBeCloseTo(bulkDensityOf({ medium: 'organic' }).value, 6);
  });

  it('knows mixes and soilless media', () => {
    // Mix 0.5 to 0.9 (TEXT, from memory); peat and bark mixes 0.108 to 0.14 (ARK_GH).
    expect(bulkDensityOf({ medium: 'mix' }).value).toBeCloseTo(700, 6);
    expect(bulkDensityOf({ medium: 'soilless' }).value).toBeCloseTo(124, 6);
  });
});

describe('layerOf', () => {
  it('weighs the fine soil of the layer', () => {
    const layer = layerOf({ medium: 'mineral', bulkDensity: 1300, depth: 0.1524, coarseFragments: 0.1 });
    // 15.24 cm at 1.3 g/cm³ is 198 kg/m² (usual convention, 2,000,000 lb an acre); a tenth of it is stones.
    expect(layer.mass).toBeCloseTo(198.1 * 0.9, 1);
  });

  it('tells how it came about', () => {
    const recorder = createRecorder();
    layerOf({ medium: 'mineral', texture: 'loam', depth: 0.15 }, recorder);
    expect(gaps(recorder.derivation())).toEqual([]);
    expect(recorder.derivation().steps.map((step) => step.symbol)).toEqual(['BD', 'M']);
  });

  it('refuses a layer of no depth or all stones', () => {
    expect(() => layerOf({ medium: 'mix', depth: 0 })).toThrow(RangeError);
    expect(() => layerOf({ medium: 'mix', depth: 0.1, coarseFragments: 1 })).toThrow(RangeError);
  });
});

describe('leastCapacity', () => {
  it('gives the published default of each soil', () => {
    // Curtin and Trolove 2013, mmol H+/kg/pH: sand 21, sandy loam 32, loam 42, clay loam 54, clay 62, compost bed 80.
    const of = (name: 'sand' | 'sandy loam' | 'loam' | 'clay loam' | 'clay') =>
      leastCapacity({ medium: 'mineral', texture: textureOf({ texture: name }) }).median / 0.00005004;
    expect(of('sand')).toBeCloseTo(21, 0);
    expect(of('sandy loam')).toBeCloseTo(32, 0);
    expect(of('loam')).toBeCloseTo(42, 0);
    expect(of('clay loam')).toBeCloseTo(54, 0);
    expect(of('clay')).toBeCloseTo(62, 0);
    expect(leastCapacity({ medium: 'mix' }).median / 0.00005004).toBeCloseTo(80, 0);
  });

  it('reproduces the equation table', () => {
    // OC and clay in %, g CaCO3/kg/pH: 0.6, 6 0.98; 1.5, 12 1.61; 3, 30 2.90; 5, 35 4.07 (HB-PTF).
    for (const [carbon, clay, beta] of [
      [0.6, 6, 0.98],
      [1.5, 12, 1.61],
      [3, 30, 2.9],
      [5, 35, 4.07],
    ] as const)
      expect(capacityByCarbonAndClay(carbon / 100, clay / 100) * 1000).toBeCloseTo(beta, 2);
  });

  it('is less sure the less is known', () => {
    const texture = textureOf({ texture: 'loam' });
    const both = leastCapacity({ medium: 'mineral', texture, organicCarbon: 0.02 }).sdLog;
    const one = leastCapacity({ medium: 'mineral', texture }).sdLog;
    const none = leastCapacity({ medium: 'mineral' }).sdLog;
    expect(both).toBeLessThan(one);
    expect(one).toBeLessThan(none);
  });

  it('tells how it came about', () => {
    const recorder = createRecorder();
    leastCapacity({ medium: 'mineral', texture: textureOf({ texture: 'loam' }) }, recorder);
    expect(gaps(recorder.derivation())).toEqual([]);
  });
});

import { textureRules } from '@sorrel/almanac/texture-rules';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nearbyClasses, textureClass } from './texture-class.ts';
import { textureCode, textureNamed } from './texture-code.ts';
import { polygonClass } from './texture-polygon.ts';

const of = (sand: number, silt: number, clay: number) =>
  textureClass({ sand: sand / 100, silt: silt / 100, clay: clay / 100 });

/** Reads a rule of the almanac table, so that the table and the code are held together. */
const rule = (text: string) => {
  const js = text
    .replace(/([\d.]+)<=(\w+)<([\d.]+)/g, '($1<=$2&&$2<$3)')
    .replace(/([\d.]+)<(\w+)<=([\d.]+)/g, '($1<$2&&$2<=$3)')
    .replaceAll(' and ', '&&')
    .replaceAll(' or ', '||');
  return new Function('sand', 'silt', 'clay', `return ${js}`) as (sand: number, silt: number, clay: number) => boolean;
};
const rules = textureRules.map((row) => ({ name: row.class, test: rule(row.rule) }));

const grid: [number, number, number][] = [];
for (let sand = 0; sand <= 200; sand++)
  for (let silt = 0; silt <= 200 - sand; silt++) grid.push([sand / 2, silt / 2, 100 - sand / 2 - silt / 2]);

describe('textureClass', () => {
  it('gives every point of a half-percent grid one class, the one the printed rules give', () => {
    expect(grid).toHaveLength(20301);
    const odd: string[] = [];
    for (const [sand, silt, clay] of grid) {
      const matching = rules.filter(({ test }) => test(sand, silt, clay)).map(({ name }) => name);
      const mine = of(sand, silt, clay);
      if (matching[0] !== mine) odd.push(`${sand}/${silt}/${clay}: ${matching} but ${mine}`);
      // Ties only on silt + 1.5 clay = 15 (the rules of the Soil Survey Manual, recomputed on this grid).
      if (matching.length !== 1 && silt + 1.5 * clay !== 15) odd.push(`${sand}/${silt}/${clay}: ${matching}`);
    }
    expect(odd).toEqual([]);
  });

  it('keeps the half-open limits', () => {
    // Soil Survey Manual, USDA Handbook 18, chapter 3, and the SSSA glossary.
    expect(of(85, 15, 0)).toBe('sand');
    expect(of(84.9, 15.1, 0)).toBe('loamy sand');
    expect(of(52, 41, 7)).toBe('loam');
    expect(of(52.5, 40.5, 7)).toBe('sandy loam');
    expect(of(45, 28, 27)).toBe('clay loam');
    expect(of(45.5, 27.5, 27)).toBe('sandy clay loam');
    expect(of(20, 53, 27)).toBe('silty clay loam');
    expect(of(20.5, 52.5, 27)).toBe('clay loam');
    expect(of(45, 15, 40)).toBe('clay');
    expect(of(20, 40, 40)).toBe('silty clay');
    expect(of(20, 80, 0)).toBe('silt');
    expect(of(0, 88, 12)).toBe('silt loam');
    expect(of(45, 20, 35)).toBe('clay loam');
    expect(of(46, 19, 35)).toBe('sandy clay');
  });

  it('names surveyed soils as the survey does', () => {
    // National Cooperative Soil Survey layers KY2745, KY2747, FU80171 (NCSS); worked example (ONEPLAN).
    expect(of(62.8, 25.2, 12)).toBe('sandy loam');
    expect(of(55.7, 30.3, 14)).toBe('sandy loam');
    expect(of(73.7, 14.5, 11.8)).toBe('sandy loam');
    expect(of(30, 40, 30)).toBe('clay loam');
  });

  it('names any soil, whatever its sum', () => {
    const names = new Set(textureRules.map((row) => row.class));
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0.001, max: 1, noNaN: true }),
        (sand, silt, clay) => {
          const name = textureClass({ sand, silt, clay });
          expect(names.has(name)).toBe(true);
          expect(textureClass({ sand: sand * 7, silt: silt * 7, clay: clay * 7 })).toBe(name);
        },
      ),
    );
  });

  it('refuses what is no soil', () => {
    expect(() => textureClass({ sand: 0, silt: 0, clay: 0 })).toThrow(RangeError);
    expect(() => textureClass({ sand: -0.1, silt: 0.6, clay: 0.5 })).toThrow(RangeError);
  });
});

describe('nearbyClasses', () => {
  it('shows both names of a layer whose survey word differs from its sizes', () => {
    // NCSS layer FU80172: printed loamy sand, sizes 79.9/10.0/10.1.
    const parts = { sand: 0.799, silt: 0.1, clay: 0.101 };
    expect(textureClass(parts)).toBe('sandy loam');
    expect(nearbyClasses(parts)).toEqual(['loamy sand']);
  });

  it('is silent in the middle of a class', () => {
    expect(nearbyClasses({ sand: 0.4, silt: 0.4, clay: 0.2 })).toEqual([]);
  });
});

describe('polygonClass', () => {
  it('gives every point of the grid a class', () => {
    for (const [sand, silt, clay] of grid) expect(polygonClass({ sand, silt, clay })).toBeDefined();
  });

  it('differs from the rules over 0.8 % of the triangle', () => {
    // Corner table (MOEYS) against the rules: about 0.8 % of the area. Points are set off the lines: on a grid that
    // lies on shared edges the share says more about ties than about area.
    const side = 400;
    let all = 0;
    let differ = 0;
    for (let i = 0; i < side; i++)
      for (let j = 0; j < side - i; j++) {
        const parts = { sand: (i + 1 / 3) / side, silt: (j + 1 / 3) / side, clay: 0 };
        parts.clay = 1 - parts.sand - parts.silt;
        all++;
        if (polygonClass(parts) !== textureClass(parts)) differ++;
      }
    expect(differ / all).toBeCloseTo(0.008, 3);
  });

  it('draws the loam line at 27.5, not 27', () => {
    const parts = { sand: 0.328, silt: 0.4, clay: 0.272 };
    expect(textureClass(parts)).toBe('clay loam');
    expect(polygonClass(parts)).toBe('loam');
  });
});

describe('texture codes', () => {
  it('go both ways', () => {
    for (const row of textureRules) {
      expect(textureNamed(row.code)).toBe(row.class);
      expect(textureCode(textureNamed(row.class) as never)).toBe(row.code);
    }
    expect(textureNamed('Silt-Loam')).toBe('silt loam');
    expect(textureNamed('gravel')).toBeUndefined();
  });
});

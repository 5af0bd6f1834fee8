import { describe, expect, it } from 'vitest';
import { cautionOf, cautions } from './cautions.ts';
import { leadLevel } from './lead-levels.ts';
import { materialOf, materials } from './materials.ts';
import { limitFor, safeLimits } from './safe-limits.ts';
import { en } from './words/en/index.ts';

describe('the materials tables', () => {
  it('have a sentence for every caution, and a caution for every code', () => {
    for (const row of cautions) expect(row.message in en, row.code).toBe(true);
    for (const row of materials)
      for (const code of row.cautions) expect(cautionOf(code), `${row.key} ${code}`).toBeDefined();
  });

  it('keep the typical figure inside its range', () => {
    for (const row of materials) {
      expect(row.nvLow, row.key).toBeLessThanOrEqual(row.nvTypical);
      expect(row.nvHigh, row.key).toBeGreaterThanOrEqual(row.nvTypical);
      if (row.densityLow !== undefined) expect(row.densityTypical, row.key).toBeGreaterThanOrEqual(row.densityLow);
    }
    expect(materialOf('biochar')).toMatchObject({ nvLow: 0.00275, nvHigh: 0.128 });
  });

  it('hold neither more calcium and magnesium than their neutralising value allows', () => {
    // The bases of a carbonate cannot exceed its calcium carbonate equivalent (CALC: 2.497 per Ca, 4.118 per Mg).
    for (const row of materials)
      if (row.role === 'liming' && row.nvTypical > 0)
        expect(row.calcium * 2.497 + row.magnesium * 4.118, row.key).toBeLessThanOrEqual(row.nvTypical * 1.12);
  });

  it('carry the published figure of each limit in SI', () => {
    // 1 lb/100 sq ft = 0.04882 kg/m2 (exact definition of the pound and foot).
    const perUnit: Record<string, number> = {
      'lb/100 sq ft': 0.0488243,
      'lb CCE/100 sq ft': 0.0488243,
      'lb/1000 sq ft': 0.00488243,
      'lb/acre': 0.000112085,
      'ton/acre': 0.22417,
      't/ha': 0.1,
    };
    for (const row of safeLimits) {
      const unit = perUnit[row.unit ?? ''];
      if (unit === undefined || row.kgPerM2 === undefined) continue;
      const figures = row.published.match(/[\d.]+/g)?.map(Number) ?? [];
      expect(
        figures.some((figure) => Math.abs(figure * unit - (row.kgPerM2 ?? 0)) < 6e-5),
        `${row.group} ${row.published}`,
      ).toBe(true);
    }
  });

  it('choose the lowest figure as the default, never two for one situation', () => {
    const keys = safeLimits.filter((row) => row.default).map((row) => `${row.group}|${row.situation}`);
    expect(new Set(keys).size).toBe(keys.length);
    for (const row of safeLimits.filter((candidate) => candidate.default))
      for (const other of safeLimits)
        if (other.group === row.group && other.situation === row.situation && other.measure === row.measure)
          expect(other.kgPerM2 ?? 9, `${row.group} ${row.situation}`).toBeGreaterThanOrEqual(row.kgPerM2 ?? 0);
    expect(limitFor('lime', 'open ground')?.kgPerM2).toBeCloseTo(0.488, 3);
    expect(limitFor('lime', 'lawn')?.kgPerM2).toBeCloseTo(0.244, 3);
    expect(limitFor('sulfur', 'lawn')).toMatchObject({ timesPerYear: 2 });
    expect(limitFor('caustic lime', 'open ground')).toBeUndefined();
  });

  it('date the lead levels', () => {
    expect([leadLevel('talk'), leadLevel('refer'), leadLevel('no food')].map((x) => Math.round(x * 1e6))).toEqual([
      100, 200, 400,
    ]);
  });
});

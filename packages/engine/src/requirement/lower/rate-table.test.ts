import { acidifyingLimits } from '@sorrel/almanac/acidifying-limits';
import { sulfurRates } from '@sorrel/almanac/sulfur-rates';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sulfurPublished } from './published.ts';
import { KG_PER_M2, type RateUnit } from './rate.ts';
import { amountFrom, columnFor, rateTable } from './rate-table.ts';

const publications = [...new Set(sulfurRates.map((row) => row.publication))];
const columns = publications.flatMap((publication) => rateTable(publication));

describe('published sulfur tables', () => {
  // Cells as printed; MSU-R second-hand, WFH and HGIC from memory, the others read.
  it.each([
    ['MSU-R', 'loam', 6.0, 4.5, 1540, 'lb/acre'],
    ['MSU-R', 'clay', 6.5, 4.5, 3030, 'lb/acre'],
    ['OMAFRA', 'sandy loam', 6.0, 5.0, 750, 'kg/ha'],
    ['UTK', 'clay', 6.5, 5.5, 26.67, 'lb/1000 sq ft'],
    ['KSU-O', 'loam', 8.5, 6.5, 22, 'lb/1000 sq ft'],
    ['RHS', 'clay', 7.25, 6.25, 270, 'g/m2'],
    ['MSUSULF', 'organic', 5.0, 4.0, 10.3, 'lb/100 sq ft'],
    ['NDSUIRON', 'clay', 8.0, 6.5, 4.6, 'lb/100 sq ft'],
    ['WFH', 'sand', 7.0, 6.5, 100, 'lb/acre'],
    ['HGIC', 'loam', 7.0, 4.5, 0.5, 'lb/10 sq ft'],
  ] as const)('%s, %s, %s to %s: %s %s', (publication, texture, from, to, rate, unit) => {
    const found = sulfurPublished(publication, texture, from, to);
    expect(found?.as.unit).toBe(unit);
    expect(found?.as.low).toBeCloseTo(rate, 2);
    expect(found?.printed).toBe(true);
  });

  it('answers to every key a copy of the table is cited by', () => {
    for (const key of ['OHW', 'MSUSULF']) expect(sulfurPublished(key, 'loam', 7, 6)?.as.low).toBe(1.6);
    for (const key of ['KSU-O', 'KSUSULF', 'PUR-E']) expect(sulfurPublished(key, 'clay', 7.5, 6.5)?.as.low).toBe(17);
    expect(sulfurPublished('nobody', 'clay', 7.5, 6.5)).toBeUndefined();
  });

  it('adds up steps and reads between rows, and says that it did', () => {
    expect(sulfurPublished('OHW', 'sand', 7, 5)).toMatchObject({ as: { low: 2.5 }, printed: false });
    expect(sulfurPublished('MSU-R', 'sand', 5.25, 4.5)?.as.low).toBeCloseTo((175 + 350) / 2, 9);
    expect(sulfurPublished('HGIC', 'loam', 7.5, 6.5)?.as.low).toBeCloseTo(0.2, 9);
    expect(sulfurPublished('MSU-R', 'loam', 7.5, 4.5)).toBeUndefined();
  });

  it('serves texture classes through the column that stands for them, and no others', () => {
    expect(columnFor(rateTable('MSU-R'), 'silty clay')?.texture).toBe('clay');
    expect(columnFor(rateTable('EXT'), 'sandy loam')?.texture).toBe('sandy');
    expect(columnFor(rateTable('MSU-R'), 'sandy loam')).toBeUndefined();
    expect(columnFor(rateTable('OMAFRA'), 'clay')).toBeUndefined();
    expect(columnFor(rateTable('UME254'), undefined)?.texture).toBe('field');
  });

  it('needs nothing at or below the target, never less for a longer way, and adds up', () => {
    const ph = fc.double({ min: 4, max: 8.5, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...columns), ph, ph, ph, (column, a, b, c) => {
        const [low, middle, high] = [a, b, c].sort((x, y) => x - y) as [number, number, number];
        expect(amountFrom(column, low, middle)?.high).toBe(0);
        const whole = amountFrom(column, high, low);
        const upper = amountFrom(column, high, middle);
        const lower = amountFrom(column, middle, low);
        if (whole === undefined || upper === undefined || lower === undefined) return;
        expect(whole.low).toBeGreaterThanOrEqual(upper.low - 1e-9);
        if (!column.rows.some((row) => row.phFrom === high || row.phTo === low))
          expect(upper.low + lower.low).toBeCloseTo(whole.low, 6);
      }),
    );
  });

  // 1 lb/100 sq ft = 48.82 g/m², 1 lb/acre = 0.1121 g/m² (acidification note, derived from exact definitions).
  it('turns units exactly', () => {
    expect(KG_PER_M2['lb/100 sq ft']).toBeCloseTo(0.04882, 5);
    expect(KG_PER_M2['lb/1000 sq ft'] * 1000).toBeCloseTo(4.882, 3);
    expect(KG_PER_M2['lb/acre'] * 1000).toBeCloseTo(0.1121, 4);
    expect(KG_PER_M2['lb/10 sq ft']).toBeCloseTo(10 * KG_PER_M2['lb/100 sq ft'], 12);
  });
});

describe('traps in print', () => {
  it('holds no lime table under a sulfur heading: more sulfur from a higher pH, never less', () => {
    for (const column of columns)
      for (const a of column.rows)
        for (const b of column.rows)
          if (a.phTo === b.phTo && a.phFrom > b.phFrom) expect(a.rateLow).toBeGreaterThan(b.rateLow);
    expect(sulfurRates.some((row) => row.sources.includes('ISU-Q'))).toBe(false);
  });

  it('holds no limit for one dressing above 150 g/m²; a column that prints 10 lb/100 sq ft is five times all others', () => {
    const single = acidifyingLimits.filter((row) => row.material === 'sulfur' && row.unit in KG_PER_M2);
    expect(single.length).toBeGreaterThan(3);
    for (const row of single) expect(row.value * KG_PER_M2[row.unit as RateUnit], row.key).toBeLessThan(0.15);
  });
});

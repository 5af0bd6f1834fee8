import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bufferRange, checkBuffer } from './buffer-check.ts';
import { checkSoilTest } from './check-soil-test.ts';
import type { BufferMethod, SoilTest } from './soil-test.ts';

const plain: SoilTest = { id: 'a', date: '2025-04-15', instrument: 'laboratory', depth: 0.15 };
const check = (more: Partial<SoilTest>) => checkSoilTest({ ...plain, ...more }, 'Bed 3', 'tests[0]', '2025-05-01');

describe('checkSoilTest', () => {
  it('finds nothing wrong with an ordinary test', () => {
    expect(
      check({
        ph: { value: 5.8, method: 'water-1:1' },
        buffer: { value: 6.5, method: 'smp' },
        cec: 0.12,
        organicMatter: 0.05,
        baseSaturation: 0.7,
        sand: 0.4,
        silt: 0.4,
        clay: 0.2,
        carbonate: 0,
      }),
    ).toEqual([]);
  });

  it('names place, field, value and what was meant by pH 45', () => {
    expect(check({ ph: { value: 45, method: 'water-1:1' } })).toEqual([
      {
        code: 'evidence.ph-impossible',
        place: 'Bed 3',
        field: 'tests[0].ph.value',
        value: 45,
        message: expect.stringContaining('45'),
        fix: 'Did you mean 4.5?',
      },
    ]);
    expect(check({ ph: { value: 1.2, method: 'unstated' } })[0]?.fix).toContain('between 3 and 10');
    expect(check({ ph: { value: Number.NaN, method: 'unstated' } })).toHaveLength(1);
  });

  it('takes no buffer pH above the buffer itself', () => {
    // Buffers as made up: SMP 7.5 (WCC103), Mehlich 6.6 (Hoskins2005), Adams-Evans 8.00 (UGA-STL6), Moore-Sikora 8.00 (CLEMSON-LAB).
    const start: Partial<Record<BufferMethod, number>> = {
      smp: 7.5,
      mehlich: 6.6,
      'modified-mehlich': 6.6,
      'adams-evans': 8,
      'moore-sikora': 8,
    };
    for (const [method, ph] of Object.entries(start)) {
      expect(bufferRange(method as BufferMethod).start).toBe(ph);
      expect(checkBuffer(ph - 0.3, method as BufferMethod, 'buffer.value')).toBeUndefined();
      expect(checkBuffer(ph + 0.2, method as BufferMethod, 'buffer.value')?.code).toBe('evidence.buffer-above-itself');
    }
  });

  it('reads a lime index of 69 as 6.9', () => {
    expect(check({ buffer: { value: 69, method: 'smp' } })[0]?.fix).toContain('6.9');
  });

  it('lets a sum of 99 pass and stops a sum of 90', () => {
    // Published horizon that adds up to 99 (PMC_TEX).
    expect(check({ sand: 0.19, silt: 0.56, clay: 0.24 })).toEqual([]);
    expect(check({ sand: 0.3, silt: 0.3, clay: 0.3 })[0]).toMatchObject({
      code: 'evidence.texture-sum',
      value: 0.8999999999999999,
    });
    expect(check({ sand: 0.8, clay: 0.3 })[0]?.code).toBe('evidence.texture-sum');
  });

  it('names the field of any figure out of bounds', () => {
    const wrong: [Partial<SoilTest>, string][] = [
      [{ depth: 0 }, 'depth'],
      [{ depth: 15 }, 'depth'],
      [{ cec: 12 }, 'cec'],
      [{ organicMatter: 5 }, 'organicMatter'],
      [{ baseSaturation: 70, cec: 0.1 }, 'baseSaturation'],
      [{ carbonate: 5 }, 'carbonate'],
      [{ cores: 0 }, 'cores'],
      [{ date: '2025-02-30' }, 'date'],
      [{ date: '2025-06-01' }, 'date'],
      [{ organicMatter: 0.02, organicCarbon: 0.04 }, 'organicCarbon'],
      [{ baseSaturation: 0.7 }, 'cec'],
    ];
    for (const [more, field] of wrong) {
      const problems = check(more);
      expect(problems.map((one) => one.field)).toEqual([`tests[0].${field}`]);
      expect(problems[0]?.fix).toMatch(/\.$|\?$/);
    }
  });

  it('never throws, whatever number is typed', () => {
    const any = fc.oneof(fc.double(), fc.constantFrom(0, -1, 1e300));
    fc.assert(
      fc.property(any, any, any, (ph, depth, sand) => {
        expect(
          Array.isArray(check({ ph: { value: ph, method: 'unstated' }, depth, sand, silt: sand, clay: depth })),
        ).toBe(true);
      }),
    );
  });
});

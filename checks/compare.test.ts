import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CheckCase } from './adapter.ts';
import { compare, difference, holds } from './compare.ts';

const check = (expected: CheckCase['expected'], tolerance: string): CheckCase => ({
  id: 'x',
  title: '',
  inputs: {},
  expected,
  tolerance,
  source: '',
  basis: 'read',
  note: '',
});
const within = (expected: CheckCase['expected'], tolerance: string, ours: Record<string, unknown>) =>
  compare(check(expected, tolerance), ours).within;

const size = fc.double({ min: -1e6, max: 1e6, noNaN: true });

describe('comparing our figure with the published one', () => {
  it('passes inside an absolute tolerance and fails outside it, on both sides', () => {
    fc.assert(
      fc.property(
        size,
        fc.double({ min: 1e-3, max: 1e3, noNaN: true }),
        fc.double({ min: -3, max: 3, noNaN: true }),
        (p, t, k) => {
          fc.pre(Math.abs(Math.abs(k) - 1) > 1e-3);
          expect(within({ x: p }, String(t), { x: p + k * t })).toBe(Math.abs(k) < 1);
        },
      ),
    );
  });

  it('measures a percentage by the published figure, also when that is negative', () => {
    expect(within({ x: -100 }, '3%', { x: -103 })).toBe(true);
    expect(within({ x: -100 }, '3%', { x: -103.1 })).toBe(false);
    expect(within({ x: -100 }, '3%', { x: 100 })).toBe(false);
    expect(within({ x: 10 }, 'rule exact; model -40/+100%', { x: 10, x_model: 6.1 })).toBe(true);
    expect(within({ x: 10 }, 'rule exact; model -40/+100%', { x: 10, x_model: 5.9 })).toBe(false);
    expect(within({ x: 10 }, 'rule exact; model -40/+100%', { x: 10, x_model: 20.1 })).toBe(false);
  });

  it('never passes under a tighter tolerance what fails under a wider one', () => {
    fc.assert(
      fc.property(
        size,
        size,
        fc.double({ min: 0, max: 100, noNaN: true }),
        fc.double({ min: 0, max: 100, noNaN: true }),
        (p, o, a, b) => {
          const [tight, wide] = a < b ? [a, b] : [b, a];
          if (within({ x: p }, `${tight}%`, { x: o })) expect(within({ x: p }, `${wide}%`, { x: o })).toBe(true);
        },
      ),
    );
  });

  it('passes the dust of computer arithmetic as exact, and nothing more', () => {
    expect(within({ x: 0.3 }, 'exact', { x: 0.1 + 0.2 })).toBe(true);
    expect(within({ x: 26.67 }, 'exact', { x: 80 / 3 })).toBe(false);
    expect(within({ x: 0 }, '0', { x: 1e-12 })).toBe(false);
  });

  it('misses when we give no figure, no number or not a number', () => {
    for (const ours of [
      {},
      { x: undefined },
      { x: null },
      { x: '1' },
      { x: Number.NaN },
      { x: Number.POSITIVE_INFINITY },
    ])
      expect(within({ x: 1 }, 'within factor 2', ours)).toBe(false);
  });

  it('wants the model as well as the look-up when the tolerance speaks of both', () => {
    const text = 'model +-35%; table lookup exact';
    expect(within({ x: 100 }, text, { x: 100, x_model: 130 })).toBe(true);
    expect(within({ x: 100 }, text, { x: 100, x_model: 136 })).toBe(false);
    expect(within({ x: 100 }, text, { x: 100 })).toBe(false);
    expect(within({ x: 100 }, text, { x: 101, x_model: 100 })).toBe(false);
    expect(within({ x: 100 }, 'lookup exact; model not expected to match', { x: 100, x_model: 900 })).toBe(true);
  });

  it('compares lists and nested figures part by part', () => {
    expect(within({ x: [5.93, 8.9] }, '0.01', { x: [5.933, 8.899] })).toBe(true);
    expect(within({ x: [5.93, 8.9] }, '0.01', { x: [5.933] })).toBe(false);
    expect(
      within(
        {
          x: [
            [1, 2],
            [3, 4],
          ],
        },
        'exact',
        {
          x: [
            [1, 2],
            [3, 5],
          ],
        },
      ),
    ).toBe(false);
    expect(within({ x: { low: 1, unit: 'lb' } }, '0.1', { x: { low: 1.05, unit: 'lb' } })).toBe(true);
    expect(within({ x: { low: 1, unit: 'lb' } }, '0.1', { x: { low: 1.05, unit: 'kg' } })).toBe(false);
  });

  it('compares words, dates, yes and no, and nothing', () => {
    expect(within({ x: 'SL' }, 'exact', { x: 'sl' })).toBe(false);
    expect(
      within({ x: 'usually suppressed, not guaranteed' }, 'text', { x: 'Usually suppressed; not guaranteed.' }),
    ).toBe(true);
    expect(within({ x: 'falls' }, 'direction', { x: 'rises' })).toBe(false);
    expect(within({ x: '2026-07-30' }, '0 days', { x: '2026-07-31' })).toBe(false);
    expect(within({ x: '2026-07-30' }, '1 days', { x: '2026-07-31' })).toBe(true);
    expect(within({ x: true }, 'exact', { x: false })).toBe(false);
    expect(within({ x: null }, 'exact', { x: null })).toBe(true);
    expect(within({ x: null }, 'exact', {})).toBe(false);
  });

  it('takes a direction from the start among the inputs, from nought for a change, and from nothing else', () => {
    const from = { ...check({ pH: 5.8 }, 'direction'), inputs: { pH0: 6.6 } };
    expect(compare(from, { pH: 6.5 }).within).toBe(true);
    expect(compare(from, { pH: 6.7 }).within).toBe(false);
    expect(within({ dpH: -0.2 }, 'direction', { dpH: -0.9 })).toBe(true);
    expect(within({ dpH: -0.2 }, 'direction', { dpH: 0.1 })).toBe(false);
    expect(within({ pH: 5.8 }, 'direction', { pH: 6.5 })).toBe(false);
  });

  it('keeps to the side a qualitative key names, and the order when asked', () => {
    expect(within({ final_pH_below: 5.5 }, 'qualitative', { final_pH_below: 5.2 })).toBe(true);
    expect(within({ final_pH_below: 5.5 }, 'qualitative', { final_pH_below: 5.6 })).toBe(false);
    expect(within({ year_5: 1, year_20: 6 }, '+-2.5 yr and order kept', { year_5: 3, year_20: 4 })).toBe(true);
    expect(within({ year_5: 1, year_20: 2 }, '+-2.5 yr and order kept', { year_5: 3, year_20: 2 })).toBe(false);
  });

  it('prints the difference as ours less published', () => {
    expect(difference(200, 198)).toBe('-2 (-1 %)');
    expect(difference([1, 2], [1, 2.5])).toBe('0, +0.5 (+25 %)');
    expect(difference('2026-07-30', '2026-08-01')).toBe('+2 days');
    expect(difference('a', 'b')).toBe('different');
    expect(difference(1, undefined)).toBe('no figure');
  });

  it('keeps a floor from below and a ceiling from above, whatever lies on the other side', () => {
    const exact = { kind: 'exact' } as const;
    expect(holds(0.85, 0.97, exact, 'fraction_min')).toBe(true);
    expect(holds(0.85, 0.8, exact, 'fraction_min')).toBe(false);
    expect(holds(2, 0, exact, 'cm_below_max')).toBe(true);
    expect(holds(2, 2.5, exact, 'cm_below_max')).toBe(false);
    expect(holds(2, 0, exact, 'cm')).toBe(false);
  });
});

import fc from 'fast-check';
import { jStat } from 'jstat';
import { describe, expect, it } from 'vitest';
import type { BufferCurve } from '../soil/soil.ts';
import { largestSafeDose, normalChance, overshootRisk } from './risk.ts';

const curve = (beta0 = 0.002, sdLog = 0.4, carbonate = 0): BufferCurve => ({
  beta0,
  sdLog,
  pm: 5.6,
  w: 1.6,
  carbonate,
  plateau: 8.2,
});
const MASS = 195;

/** The same question answered by brute force, with a seeded generator. */
function byDrawing(dose: number, c: BufferCurve, mean: number, sd: number, end: number, sign: 1 | -1): number {
  let state = 12345;
  const uniform = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return (state + 0.5) / 4294967296;
  };
  const normal = () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
  let beyond = 0;
  const n = 200_000;
  for (let i = 0; i < n; i++) {
    const beta = c.beta0 * Math.exp(c.sdLog * normal());
    const ph = mean + sd * normal();
    const base =
      beta * c.w * Math.sinh((ph - c.pm) / c.w) + sign * Math.max(0, dose / MASS - (sign < 0 ? c.carbonate : 0));
    const after = c.pm + c.w * Math.asinh(base / (beta * c.w));
    if (sign * (after - end) > 0) beyond++;
  }
  return beyond / n;
}

describe('overshootRisk', () => {
  it('agrees with a general-purpose library on the normal distribution (jStat 1.9)', () => {
    for (const z of [-3, -1.645, -0.5, 0, 0.7, 1.96, 3.2])
      expect(normalChance(z)).toBeCloseTo(jStat.normal.cdf(z, 0, 1), 6);
  });

  it.each([
    [0.3, 5.4, 0.15, 7, 1],
    [0.6, 5.4, 0.15, 6.8, 1],
    [0.4, 5.8, 0.25, 6.5, 1],
    [0.3, 6.4, 0.15, 5.2, -1],
  ] as const)(
    'gives the chance that drawing 200,000 beds gives: dose %d from pH %d ± %d towards %d',
    (dose, mean, sd, end, sign) => {
      const risk = overshootRisk(curve(), { mean, sd }, end, MASS, sign > 0 ? 'raise' : 'lower');
      expect(Math.abs(risk.chance(dose) - byDrawing(dose, curve(), mean, sd, end, sign))).toBeLessThan(0.006);
    },
  );

  it('rises with the dose and never leaves 0 to 1', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 4, max: 7.5, noNaN: true }),
        fc.double({ min: 0.05, max: 0.6, noNaN: true }),
        fc.double({ min: 0, max: 3, noNaN: true }),
        fc.double({ min: 0, max: 3, noNaN: true }),
        (mean, sd, a, b) => {
          const risk = overshootRisk(curve(), { mean, sd }, 7, MASS, 'raise');
          const [low, high] = [risk.chance(Math.min(a, b)), risk.chance(Math.max(a, b))];
          expect(low).toBeGreaterThanOrEqual(0);
          expect(high).toBeLessThanOrEqual(1);
          expect(high).toBeGreaterThanOrEqual(low - 1e-9);
        },
      ),
    );
  });
});

describe('largestSafeDose', () => {
  it('keeps the chance, and takes the whole need when that is safe', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 4.2, max: 6.2, noNaN: true }),
        fc.double({ min: 0.1, max: 0.3, noNaN: true }),
        fc.double({ min: 0.15, max: 0.7, noNaN: true }),
        fc.double({ min: 0.01, max: 2, noNaN: true }),
        (mean, sd, sdLog, most) => {
          const risk = overshootRisk(curve(0.002, sdLog), { mean, sd }, 6.8, MASS, 'raise');
          const dose = largestSafeDose(risk, most, 0.05);
          expect(dose).toBeLessThanOrEqual(most);
          if (dose > 0) expect(risk.chance(dose)).toBeLessThanOrEqual(0.05 + 1e-6);
          if (risk.chance(most) <= 0.05) expect(dose).toBe(most);
          else if (dose > 0) expect(risk.chance(dose)).toBeGreaterThan(0.05 * 0.95);
        },
      ),
    );
  });

  it('gives nothing to a bed that may be beyond the end already', () => {
    const risk = overshootRisk(curve(), { mean: 6.9, sd: 0.3 }, 7, MASS, 'raise');
    expect(largestSafeDose(risk, 0.5, 0.05)).toBe(0);
  });
});

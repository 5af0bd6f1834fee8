import { grade } from '@sorrel/almanac/assumed-sieves';
import { describe, expect, it } from 'vitest';
import { sulfurDiameterLoss, sulfurMoistureFactor, sulfurTemperatureFactor } from './oxidise.ts';
import { P } from './parameters.ts';
import { curveLeft, shareLeft, sizeClasses } from './sieve-classes.ts';

describe('sulfur oxidation', () => {
  it('has the relative rates of 85 kJ/mol (WB93): practically nothing in cold soil', () => {
    const published = [0.085, 0.163, 0.304, 0.557, 1, 1.76, 3.04];
    for (const [i, rate] of published.entries()) expect(sulfurTemperatureFactor(5 + 5 * i)).toBeCloseTo(rate, 1);
    expect(sulfurTemperatureFactor(0)).toBe(0);
    expect(sulfurTemperatureFactor(55)).toBe(0);
  });

  it('is best at field capacity', () => {
    expect(sulfurMoistureFactor(1)).toBe(1);
    expect(sulfurMoistureFactor(0.2)).toBeCloseTo(0, 12);
    expect(sulfurMoistureFactor(1.8)).toBeCloseTo(0, 12);
  });

  it('oxidises a powder under 100 um at 0.02 a day at 25 °C (DEG16a), within a factor of 2', () => {
    const rate = -Math.log(curveLeft(sizeClasses(grade('sulfur dust')), sulfurDiameterLoss(P.kSulfur.centre)));
    expect(rate).toBeGreaterThan(0.01);
    expect(rate).toBeLessThan(0.04);
  });

  it('gives the expected course of single sizes in 89 days at 25 °C (acidification 5, derived)', () => {
    const loss = sulfurDiameterLoss(P.kSulfur.centre) * 89;
    const done = (d: number) => 1 - shareLeft({ from: d * 1e-6, to: d * 1e-6 }, loss);
    expect(done(50)).toBeCloseTo(0.99, 1);
    expect(done(75)).toBeCloseTo(0.89, 2);
    expect(done(150)).toBeCloseTo(0.59, 2);
    expect(done(300)).toBeCloseTo(0.34, 2);
  });
});

import { grade } from '@sorrel/almanac/assumed-sieves';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { runLayers } from './kernel.ts';
import { runPlain } from './kernel-plain.ts';
import { runSingle } from './kernel-single.ts';
import { drawParameters } from './parameter-set.ts';
import { createRandom } from './random.ts';
import { scenario } from './scenario.ts';
import type { ForecastApplication, ForecastInput } from './types.ts';

const applications: readonly ForecastApplication[] = [
  {
    date: '2026-03-16',
    currency: 0.6,
    reaction: { law: 'dissolving', sieves: grade('ordinary limestone'), speed: 0.7 },
    incorporation: 0.15,
  },
  {
    date: '2026-06-01',
    currency: -0.8,
    reaction: { law: 'oxidising', sieves: grade('sulfur dust'), speed: 1, waits: true },
    incorporation: 0.15,
  },
  {
    date: '2025-09-01',
    currency: -0.3,
    reaction: { law: 'oxidising', sieves: grade('sulfur granules'), speed: 1, waits: false },
    incorporation: 0.15,
  },
  { date: '2027-02-11', currency: 0.9, reaction: { law: 'fast', days: 1.5 }, incorporation: 0.2 },
  { date: '2027-02-11', currency: -0.4, reaction: { law: 'fast', days: 3 }, incorporation: 0.15 },
];

it('the quick kernel, the plain one and the general one give the same pH, member by member, for the same count', () => {
  fc.assert(
    fc.property(
      fc.subarray([...applications]),
      fc.double({ min: 4, max: 8, noNaN: true }),
      fc.constantFrom(0, 0.004),
      fc.integer({ min: 1, max: 1000 }),
      (some, ph, carbonate, seed) => {
        const input: ForecastInput = {
          start: '2026-03-01',
          years: 2,
          layer: { depth: 0.15, bulkDensity: 1200, coarseFragments: 0, mass: 180 },
          curve: { beta0: 0.0015, sdLog: 0.4, pm: 5.6, w: 1.6, carbonate, plateau: 7.9 },
          present: { mean: ph, sd: 0.3 },
          medium: 'mineral',
          applications: some,
          yearly: { nitrogen: { amount: 0.01, charge: 1 }, waterAlkalinity: 3 },
          weather: { irrigation: 0.2 },
        };
        const set = drawParameters(input, 130, createRandom(seed));
        const shared = scenario(input);
        const one = new Float64Array((shared.steps + 1) * set.count);
        const two = new Float64Array(one.length);
        const three = new Float64Array(one.length);
        const quick = runSingle(shared, set, one);
        const plain = runPlain(shared, set, two);
        runLayers(shared, set, { ph: three });
        expect(quick).toBe(plain);
        let apart = 0;
        for (let i = 0; i < one.length; i++) {
          const value = two[i] as number;
          apart = Math.max(apart, Math.abs((one[i] as number) - value), Math.abs((three[i] as number) - value));
        }
        expect(apart).toBeLessThan(1e-9);
      },
    ),
    { numRuns: 40 },
  );
});

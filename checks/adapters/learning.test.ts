import { describe, expect, it } from 'vitest';
import type { CheckCase } from '../adapter.ts';
import { learning } from './learning.ts';

const run = (inputs: CheckCase['inputs'], expected: CheckCase['expected']) => {
  const check: CheckCase = { id: '', title: '', inputs, expected, tolerance: '', source: '', basis: '', note: '' };
  return learning.find((adapter) => adapter.accepts(check))?.compute(check);
};

describe('cases of learning by their shape', () => {
  it('a surer retest, by a grid of its own (posterior on ln beta, normal errors)', () => {
    let [total, mean] = [0, 0];
    for (let i = 0; i <= 20_000; i++) {
      const log = Math.log(10) + (i / 20_000) * Math.log(50);
      const weight = Math.exp(-0.5 * ((log - Math.log(60)) / 0.4) ** 2 - 0.5 * ((1.5 - 90 / Math.exp(log)) / 0.2) ** 2);
      total += weight;
      mean += weight * log;
    }
    const inputs = { prior_median: 60, prior_sdlog: 0.4, dose_mmol_kg: 90, dpH_obs: 1.5, sd_dpH: 0.2 };
    expect(run(inputs, { posterior_median: 0 })?.posterior_median).toBeCloseTo(Math.exp(mean / total), 2);
  });

  it('acid of sulfur over soil and change: 100 g in 195 kg from 7.2 to 6.4 is 40 mmol/kg/pH (by hand)', () => {
    const beta = run({ S_ox_g: 100, M: 195, eta: 1, pH0: 7.2, pH1: 6.4 }, { beta_new: 0 })?.beta_new;
    expect(beta).toBeCloseTo((2000 * 100) / 32.065 / 195 / 0.8, 0);
  });

  it('errors of slopes and differences (dynamics 7: 0.023 for 8 tests, 0.21 and 0.42 for two)', () => {
    expect(run({ n: 8, sd: 0.15 }, { slope_sd: 0 })?.slope_sd).toBeCloseTo(0.023, 3);
    expect(run({ sd: 0.15 }, { sd_dpH: 0 })?.sd_dpH).toBeCloseTo(0.21, 2);
    expect(run({ sd: 0.15 }, { min_difference: 0 })?.min_difference).toBeCloseTo(0.42, 2);
  });

  it('leaves other shapes alone', () => {
    expect(run({ sd: 0.3, E: 0.1, z: 1.96 }, { n: 35 })).toBeUndefined();
  });
});

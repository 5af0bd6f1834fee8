import { changeBeyondError } from '../../packages/engine/src/evidence/detectable-change.ts';
import {
  capacityByHand,
  capacityFromRetest,
  type GridPosterior,
  trendOf,
} from '../../packages/engine/src/learning/index.ts';
import { ACID_PER_SULFUR } from '../../packages/engine/src/materials/sulfur-equivalent.ts';
import { addDays } from '../../packages/engine/src/units/calendar.ts';
import type { Adapter, CheckCase } from '../adapter.ts';

type Figures = Readonly<Record<string, unknown>>;

/** The first of several spellings of an input that holds a number. */
function pick(inputs: Figures, ...names: readonly string[]): number | undefined {
  for (const name of names) {
    const value = inputs[name];
    if (typeof value === 'number' && Number.isFinite(value)) return value;
  }
  return undefined;
}

/** The one input whose name starts so. */
const starting = (inputs: Figures, start: string): number | undefined =>
  pick(inputs, ...Object.keys(inputs).filter((key) => key.startsWith(start)));

const wantsOnly = (check: CheckCase, shape: RegExp): boolean =>
  Object.keys(check.expected).length > 0 && Object.keys(check.expected).every((key) => shape.test(key));

const posteriorFigures: Readonly<Record<string, (posterior: GridPosterior) => number>> = {
  // Published centres of a lognormal posterior are the exponential of the mean logarithm.
  posterior_median: ({ meanLog }) => Math.exp(meanLog),
  posterior_middle: ({ median }) => median,
  posterior_mean: ({ meanLog, sdLog }) => Math.exp(meanLog + sdLog ** 2 / 2),
  posterior_sdlog: ({ sdLog }) => sdLog,
};

/** A prior on a capacity, one dose and the change it made. */
const retest: Adapter = {
  name: 'learning: capacity from one retest',
  accepts: (check) =>
    pick(check.inputs, 'prior_median') !== undefined &&
    pick(check.inputs, 'prior_sdlog') !== undefined &&
    starting(check.inputs, 'dose') !== undefined &&
    pick(check.inputs, 'dpH_obs', 'dpH') !== undefined &&
    pick(check.inputs, 'sd_dpH') !== undefined &&
    Object.keys(check.expected).every((key) => key in posteriorFigures),
  compute({ inputs, expected }) {
    const degrees = pick(inputs, 'df', 'degrees_of_freedom');
    if (degrees !== undefined && degrees !== 4) throw new RangeError(`errors with ${degrees} degrees of freedom`);
    const posterior = capacityFromRetest({
      prior: { median: pick(inputs, 'prior_median') ?? Number.NaN, sdLog: pick(inputs, 'prior_sdlog') ?? Number.NaN },
      dose: starting(inputs, 'dose') ?? Number.NaN,
      eta: pick(inputs, 'eta') ?? 1,
      change: pick(inputs, 'dpH_obs', 'dpH') ?? Number.NaN,
      sd: pick(inputs, 'sd_dpH') ?? Number.NaN,
      law: degrees === 4 ? 'student' : 'normal',
    });
    return Object.fromEntries(Object.keys(expected).map((key) => [key, posteriorFigures[key]?.(posterior)]));
  },
};

const sulfurOf = (inputs: Figures): number | undefined => {
  const kilograms = pick(inputs, 'S_ox', 'S_oxidised', 'S_ox_kg', 'S_oxidised_kg', 'S_ox_kg_per_m2');
  const grams = pick(inputs, 'S_ox_g', 'S_oxidised_g', 'S_ox_g_per_m2', 'S_g_per_m2');
  return kilograms ?? (grams === undefined ? undefined : grams / 1000);
};

/** `beta_new = 2000 S/32.065 eta/(M (pH0 - pH1))`, in mmol H+/kg/pH when S is in g and M in kg. */
const byHand: Adapter = {
  name: 'learning: capacity by hand from sulfur and a retest',
  accepts: ({ inputs, expected }) =>
    sulfurOf(inputs) !== undefined &&
    pick(inputs, 'M', 'M_kg', 'M_kg_per_m2', 'mass') !== undefined &&
    pick(inputs, 'pH0') !== undefined &&
    pick(inputs, 'pH1') !== undefined &&
    Object.keys(expected).every((key) => /^beta(_new)?(_mmol)?$/.test(key)),
  compute({ inputs, expected }) {
    const change = (pick(inputs, 'pH1') ?? Number.NaN) - (pick(inputs, 'pH0') ?? Number.NaN);
    const acid = -(sulfurOf(inputs) ?? Number.NaN) * ACID_PER_SULFUR;
    const mass = pick(inputs, 'M', 'M_kg', 'M_kg_per_m2', 'mass') ?? Number.NaN;
    const beta = capacityByHand(acid, mass, change, pick(inputs, 'eta') ?? 1);
    // kg CaCO3 to mmol of charge.
    return Object.fromEntries(Object.keys(expected).map((key) => [key, (beta / 0.05004) * 1000]));
  },
};

const yearlyTests = (inputs: Figures): number | undefined => pick(inputs, 'n', 'tests', 'n_tests', 'yearly_tests');
const testSd = (inputs: Figures): number | undefined => pick(inputs, 'sd', 'sd_test', 'test_sd');

/** Error of a slope through yearly tests. */
const slope: Adapter = {
  name: 'learning: error of a slope through yearly tests',
  accepts: (check) =>
    (yearlyTests(check.inputs) ?? 0) >= 3 &&
    testSd(check.inputs) !== undefined &&
    wantsOnly(check, /^(slope_sd|sd_slope|slope_se|se_slope)$/),
  compute({ inputs, expected }) {
    const sd = testSd(inputs) ?? Number.NaN;
    // Four years hold one leap day, so a date every 365.25 days.
    const readings = Array.from({ length: yearlyTests(inputs) ?? 0 }, (_, i) => ({
      date: addDays('2001-03-01', Math.round(365.25 * i)),
      ph: 6,
      sd,
    }));
    const found = trendOf(readings)?.sd;
    return Object.fromEntries(Object.keys(expected).map((key) => [key, found]));
  },
};

/** Smallest difference of two tests that is more than chance, or the error of their difference. */
const difference: Adapter = {
  name: 'learning: difference of two tests',
  accepts: (check) =>
    (testSd(check.inputs) ?? pick(check.inputs, 'sd1')) !== undefined &&
    yearlyTests(check.inputs) === undefined &&
    wantsOnly(check, /^(sd_dpH|sd_difference|d_min|min_difference|detectable_change)$/),
  compute({ inputs, expected }) {
    const one = testSd(inputs) ?? pick(inputs, 'sd1') ?? Number.NaN;
    const other = pick(inputs, 'sd2') ?? one;
    return Object.fromEntries(
      Object.keys(expected).map((key) => [
        key,
        changeBeyondError(one, other, key.startsWith('sd_') ? 1 : (pick(inputs, 'z') ?? 1.96)),
      ]),
    );
  },
};

/** Cases on what a retest teaches. */
export const learning: Adapter[] = [retest, byHand, slope, difference];

import { grade } from '@sorrel/almanac/assumed-sieves';
import {
  amplitudeAt,
  bicarbonateLeaching,
  calciteEquilibrium,
  carbonicWaterPh,
  curveLeft,
  dampingDepth,
  dissolvedAluminium,
  EQUIVALENT,
  logK,
  P,
  shareLeft,
  sizeClasses,
  sulfurDiameterLoss,
  sulfurTemperatureFactor,
} from '../../packages/engine/src/forecast/index.ts';
import type { Adapter, CheckCase } from '../adapter.ts';
import { trials } from './dynamics-trials.ts';

export const number = (check: CheckCase, key: string): number => {
  const value = check.inputs[key];
  return typeof value === 'number' ? value : Number.NaN;
};
export const has = (check: CheckCase, ...keys: string[]): boolean => keys.every((key) => key in check.inputs);
export const wants = (check: CheckCase, ...keys: string[]): boolean => keys.every((key) => key in check.expected);
const only = (check: CheckCase, ...keys: string[]) =>
  has(check, ...keys) && Object.keys(check.inputs).length === keys.length;
const range = (check: CheckCase, key: string): readonly [number, number] => {
  const value = check.inputs[key];
  return Array.isArray(value) ? [Number(value[0]), Number(value[1])] : [Number.NaN, Number.NaN];
};

const calcite: Adapter = {
  name: 'calcite in balance with water and gas',
  accepts: (check) => only(check, 'temp_C', 'pCO2_atm', 'CaCl2_M') && wants(check, 'pH'),
  compute: (check) => ({
    pH: calciteEquilibrium({
      temperature: number(check, 'temp_C'),
      pCO2: number(check, 'pCO2_atm'),
      calciumChloride: number(check, 'CaCl2_M'),
    }).ph,
  }),
};

const openWater: Adapter = {
  name: 'pure water under carbon dioxide',
  accepts: (check) => only(check, 'pCO2_atm', 'logKH', 'logK1') && wants(check, 'pH'),
  compute: (check) => ({
    pH: carbonicWaterPh(number(check, 'pCO2_atm'), number(check, 'logKH'), number(check, 'logK1')),
  }),
};

const constants: Adapter = {
  name: 'carbonate constants at a temperature',
  accepts: (check) => only(check, 'temp_C') && ['KH', 'K1', 'K2', 'Ksp', 'Kw'].some((key) => key in check.expected),
  compute: (check) =>
    Object.fromEntries(
      (['KH', 'K1', 'K2', 'Ksp', 'Kw'] as const).map((key) => [key, logK(key, number(check, 'temp_C'))]),
    ),
};

const reacted: Adapter = {
  name: 'share of a sieve class reacted after a loss of diameter',
  accepts: (check) => only(check, 'size_um', 'diameter_loss_um') && wants(check, 'fraction'),
  compute(check) {
    const [from, to] = range(check, 'size_um');
    return { fraction: 1 - shareLeft({ from: from * 1e-6, to: to * 1e-6 }, number(check, 'diameter_loss_um') * 1e-6) };
  },
};

const acidToLime: Adapter = {
  name: 'acid as lime',
  accepts: (check) => only(check, 'kmol_H') && wants(check, 'kg_CaCO3'),
  compute: (check) => ({ kg_CaCO3: number(check, 'kmol_H') * 1000 * EQUIVALENT }),
};

const damping: Adapter = {
  name: 'damping depth of soil temperature',
  accepts: (check) => only(check, 'alpha_m2_s', 'period_s') && wants(check, 'd_cm'),
  compute: (check) => ({ d_cm: 100 * dampingDepth(number(check, 'alpha_m2_s'), number(check, 'period_s')) }),
};

const amplitude: Adapter = {
  name: 'swing of temperature at a depth',
  accepts: (check) => only(check, 'A0', 'z_cm', 'd_cm') && wants(check, 'A'),
  compute: (check) => ({
    A: amplitudeAt(number(check, 'A0'), number(check, 'z_cm') / 100, number(check, 'd_cm') / 100),
  }),
};

const leaching: Adapter = {
  name: 'base leached as bicarbonate',
  accepts: (check) => only(check, 'pH', 'pCO2', 'drain_mm') && wants(check, 'kg_CaCO3_ha_yr'),
  compute: (check) => ({
    kg_CaCO3_ha_yr:
      1e4 * bicarbonateLeaching(number(check, 'pH'), number(check, 'drain_mm') / 1000, number(check, 'pCO2')),
  }),
};

const aluminium: Adapter = {
  name: 'dissolved aluminium against pH 5',
  accepts: (check) => only(check, 'pH') && wants(check, 'Al3_fold_vs_pH5'),
  compute: (check) => ({ Al3_fold_vs_pH5: dissolvedAluminium(number(check, 'pH')) / dissolvedAluminium(5) }),
};

/** First-order rate of the first day of a sulfur powder; a pastille that stays whole is slower by one factor. */
const sulfurRate: Adapter = {
  name: 'first-order rate of sulfur oxidation',
  accepts: (check) =>
    has(check, 'T') && (has(check, 'd_um_max') || has(check, 'form')) && wants(check, 'first_order_per_day'),
  compute(check) {
    const whole = String(check.inputs.form ?? '').includes('pastille');
    const most = has(check, 'd_um_max') ? number(check, 'd_um_max') * 1e-6 : 1e-4;
    // The powder's sieve curve, scaled to the coarsest grain named.
    const sieves = grade('sulfur dust').map(({ opening, passing }) => ({ opening: opening * (most / 1e-4), passing }));
    const loss =
      sulfurDiameterLoss(P.kSulfur.centre) * sulfurTemperatureFactor(number(check, 'T')) * (whole ? P.pastille : 1);
    return { first_order_per_day: -Math.log(curveLeft(sizeClasses(sieves), loss)) };
  },
};

/** Grains of 150 to 250 µm, which the reference found to fit the ten soils; moist, without the wait of fresh soil. */
const sulfurShare: Adapter = {
  name: 'share of sulfur oxidised in a time',
  accepts: (check) => has(check, 'S_mg_per_kg', 'T', 'days') && wants(check, 'oxidised_pct_low', 'high'),
  compute(check) {
    const loss =
      sulfurDiameterLoss(P.kSulfur.centre) * sulfurTemperatureFactor(number(check, 'T')) * number(check, 'days');
    const done = (d: number) => 100 * (1 - shareLeft({ from: d, to: d }, loss));
    return { oxidised_pct_low: done(250e-6), high: done(150e-6) };
  },
};

/** Every computation of the forecast room; trials are forecast in `dynamics-trials.ts`. */
export const dynamics: readonly Adapter[] = [
  calcite,
  openWater,
  constants,
  reacted,
  acidToLime,
  damping,
  amplitude,
  leaching,
  aluminium,
  sulfurRate,
  sulfurShare,
  ...trials,
];

import type { Recorder } from '../derivation/derivation.ts';
import { baseContent } from '../soil/buffer-curve.ts';
import { bicarbonateLeaching } from './drift.ts';
import type { Simulation } from './model.ts';
import { P } from './parameters.ts';
import type { Forecast, ForecastInput } from './types.ts';

/** Tells the recorder how the forecast's central run came about: start, drift, and the end. */
export function recordForecast(recorder: Recorder, input: ForecastInput, result: Forecast, run: Simulation): void {
  const { curve, present, layer } = input;
  const q = baseContent(curve, present.mean) * layer.mass;
  recorder.step({
    symbol: 'Q0',
    title: 'Base content of the layer at the start',
    formula: 'Q0 = M beta0 w sinh((pH0 - pm)/w)',
    terms: [
      { symbol: 'M', value: layer.mass, unit: 'kg/m2', origin: 'entered' },
      { symbol: 'beta0', value: curve.beta0, unit: 'kg CaCO3/kg/pH', origin: 'entered' },
      { symbol: 'pH0', value: present.mean, unit: 'pH', origin: 'entered' },
      { symbol: 'pm', value: curve.pm, unit: 'pH', origin: 'table', source: 'NELSU10' },
      { symbol: 'w', value: curve.w, unit: 'pH', origin: 'table', source: 'LIU04' },
    ],
    value: q,
    unit: 'kg CaCO3/m2',
    sources: ['NELSU10', 'LIU04'],
    basis: 'derived',
  });
  const drainage =
    run.scenario.drainage.reduce((sum, value) => sum + value, 0) /
    ((run.scenario.steps * run.scenario.stepDays) / 365.2425);
  recorder.step({
    symbol: 'L_HCO3',
    title: 'Base that a year of drainage would carry away at the present pH',
    formula: 'L_HCO3 = D min(KH K1 p/10^-pH0, 0.0035 (p/0.01)^(1/3))',
    terms: [
      { symbol: 'D', value: drainage, unit: 'm/yr', origin: 'choice' },
      { symbol: 'p', value: P.pCO2.centre, unit: 'atm', origin: 'table', source: 'TEXT' },
      { symbol: 'pH0', value: present.mean, unit: 'pH', origin: 'entered' },
    ],
    value: bicarbonateLeaching(present.mean, drainage, P.pCO2.centre),
    unit: 'kg CaCO3/m2/yr',
    sources: ['MODEL', 'PHREEQC'],
    basis: 'derived',
  });
  const change = result.account.years.reduce((sum, year) => sum + year.change, 0);
  recorder.step({
    symbol: 'Q1',
    title: 'Base content at the end of the central run: the account added to the start',
    formula: 'Q1 = Q0 + change',
    terms: [
      { symbol: 'Q0', value: q, unit: 'kg CaCO3/m2', origin: 'step' },
      { symbol: 'change', value: change, unit: 'kg CaCO3/m2', origin: 'choice' },
    ],
    value: q + change,
    unit: 'kg CaCO3/m2',
    sources: ['MODEL'],
    basis: 'derived',
    note: 'The entries of the account are listed year by year; rates in docs/model.md.',
  });
  recorder.step({
    symbol: 'pH',
    title: 'Median pH of the ensemble at the end',
    formula: 'pH = pm + w asinh(Q/(beta0 w M)), median of the members',
    terms: [
      { symbol: 'members', value: result.members, unit: '1', origin: 'choice' },
      { symbol: 'Q1', value: q + change, unit: 'kg CaCO3/m2', origin: 'step' },
    ],
    value: result.median[result.median.length - 1] ?? present.mean,
    unit: 'pH',
    sources: ['MODEL'],
    basis: 'derived',
  });
}

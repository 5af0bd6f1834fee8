import { phConversion } from '@sorrel/almanac/ph-conversions';
import type { SiemensPerMetre } from '../../units/si.ts';
import type { Conversion } from './converted.ts';
import { invertEquation } from './equation.ts';

const row = phConversion('cacl2-2.5-from-water');
const SD = row.sd ?? 0.2;

/**
 * Salt from which the gap between water and CaCl2 is no longer known well. The gap shrinks by 1.75 pH per dS/m (TAK23),
 * so 0.2 dS/m (0.02 S/m) moves it by as much as the whole error band of the regression. Our judgement.
 */
export const SALT_WIDENS: SiemensPerMetre = 0.02;
/** Salt from which nothing is converted: at 0.4 dS/m (0.04 S/m) the gap can have vanished. Our judgement, after TAK23. */
export const SALT_FORBIDS: SiemensPerMetre = 0.04;

/**
 * 0.01 M CaCl2 to water: `pHw = (pHCa + 0.9)/1.05` (Conyers and Davey 1988; CONDAV), for soils that are not salty and
 * carry negative charge. sd 0.2, and 0.3 from 0.2 dS/m.
 *
 * @returns undefined from 0.4 dS/m: use a pH measured in water instead
 */
export const fromCalciumChloride: Conversion = (value, facts, recorder) => {
  const salt = facts.conductivity ?? 0;
  if (salt >= SALT_FORBIDS) return undefined;
  const mean = invertEquation(row, value);
  if (recorder)
    recorder.step({
      symbol: 'pHw',
      title: 'pH in water',
      formula: 'pHw = (pHCa - a)/b',
      terms: [
        { symbol: 'pHCa', value, unit: 'pH', origin: 'entered' },
        { symbol: 'a', value: row.intercept, unit: 'pH', origin: 'table', source: 'CONDAV' },
        { symbol: 'b', value: row.slope, unit: '1', origin: 'table', source: 'CONDAV' },
      ],
      value: mean,
      unit: 'pH',
      sources: row.sources,
      basis: row.basis,
      note: row.condition,
    });
  return { mean, sd: salt >= SALT_WIDENS ? 0.3 : SD };
};

import { phConversion } from '@sorrel/almanac/ph-conversions';
import type { Conversion } from './converted.ts';
import { invertEquation } from './equation.ts';

const row = phConversion('water-5-from-water-2.5');
const SD = row.sd ?? 0.16;

/**
 * Water 1:5 to water 1:2.5: `pHw = (pH5 − 0.14)/0.99` (KAB16, 200 soils). The paper prints no error; sd 0.16 is that of
 * another paper for the same pair (TAK23). A third equation (LIB14) runs the other way with an error of 0.44 and a
 * sign that had to be guessed, and is not used.
 */
export const fromWaterOneToFive: Conversion = (value, _facts, recorder) => {
  const mean = invertEquation(row, value);
  if (recorder)
    recorder.step({
      symbol: 'pHw',
      title: 'pH in water at 1:2.5',
      formula: 'pHw = (pH5 - a)/b',
      terms: [
        { symbol: 'pH5', value, unit: 'pH', origin: 'entered' },
        { symbol: 'a', value: row.intercept, unit: 'pH', origin: 'table', source: 'KAB16' },
        { symbol: 'b', value: row.slope, unit: '1', origin: 'table', source: 'KAB16' },
      ],
      value: mean,
      unit: 'pH',
      sources: row.sources,
      basis: row.basis,
    });
  return { mean, sd: SD };
};

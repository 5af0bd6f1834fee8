import { phConversion } from '@sorrel/almanac/ph-conversions';
import type { Recorder } from '../../derivation/derivation.ts';
import type { Ph } from '../../units/si.ts';
import type { Conversion, Converted } from './converted.ts';

/** Water 1:1 is the scale itself. */
export const fromWaterOneToOne: Conversion = (value) => ({ mean: value, sd: 0 });

const asItStands = (id: string): Conversion => {
  const row = phConversion(id);
  const sd = row.sd ?? 0;
  return (value: Ph, _facts, recorder?: Recorder): Converted => {
    if (recorder)
      recorder.step({
        symbol: 'pHw',
        title: 'pH in water',
        formula: row.intercept === 0 ? 'pHw = pH read' : 'pHw = pH read + a',
        terms: [
          { symbol: 'pH read', value, unit: 'pH', origin: 'entered' },
          ...(row.intercept === 0
            ? []
            : [
                {
                  symbol: 'a',
                  value: row.intercept,
                  unit: 'pH',
                  origin: 'table',
                  source: row.sources[0] ?? '',
                } as const,
              ]),
        ],
        value: value + row.intercept,
        unit: 'pH',
        sources: row.sources,
        basis: row.basis,
        note: row.condition,
      });
    return { mean: value + row.intercept, sd };
  };
};

/** Water 1:2, taken as it stands (sd 0.05, our judgement). */
export const fromWaterOneToTwo = asItStands('water-from-1:2');

/** Water 1:2.5, taken as it stands (sd 0.1: one paper puts 1:1 about 0.1 lower at pH 6; TAK23). */
export const fromWaterOneToTwoAndAHalf = asItStands('water-from-1:2.5');

/** Saturated paste: about 0.1 is added (TEXT, from memory; sd 0.2). */
export const fromPaste = asItStands('water-from-paste');

/** A report that says only "pH": taken as water 1:1 with sd 0.3, for it might be a salt pH (our judgement). */
export const fromUnstated = asItStands('water-from-unstated');

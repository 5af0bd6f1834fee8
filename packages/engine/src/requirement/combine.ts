import type { Recorder } from '../derivation/derivation.ts';
import { chiSquareLimit } from './chi-square.ts';
import type { Reading } from './method.ts';
import { methodById } from './methods.ts';
import { readingSymbol } from './record.ts';

/** However many readings agree, their common errors stay: no curve is known better than this. [SORREL, judgement] */
export const LEAST_SPREAD = 0.15;

export interface Combined {
  readonly logBeta0: number;
  readonly sdLog: number;
  /** Weighted squared spread of the readings about their mean. */
  readonly chiSquare: number;
  readonly disagree: boolean;
}

/**
 * Precision-weighted mean of ln beta0:
 *
 *     ln beta0 = sum(ln beta0_i / sd_i²) / sum(1 / sd_i²),   sd = 1 / sqrt(sum(1 / sd_i²)), at least 0.15
 *
 * When chi-square passes its 5 % point for n - 1, the readings disagree by more than their errors explain and sd grows
 * by the Birge ratio sqrt(chi-square/(n - 1)).
 *
 * @param readings at least one
 * @throws RangeError for none
 * @source weights: lime-requirement section 7; widening: common practice in combining measurements
 */
export function combine(readings: readonly Reading[], recorder?: Recorder): Combined {
  if (readings.length === 0) throw new RangeError('nothing to combine');
  let weights = 0;
  let sum = 0;
  for (const { sdLog, logBeta0 } of readings) {
    const weight = 1 / (sdLog * sdLog);
    weights += weight;
    sum += weight * logBeta0;
  }
  const mean = sum / weights;
  let chiSquare = 0;
  for (const { sdLog, logBeta0 } of readings) chiSquare += ((logBeta0 - mean) / sdLog) ** 2;
  const degrees = readings.length - 1;
  const disagree = degrees > 0 && chiSquare > chiSquareLimit(degrees);
  const own = Math.sqrt(1 / weights) * (disagree ? Math.sqrt(chiSquare / degrees) : 1);
  const combined = { logBeta0: mean, sdLog: Math.max(LEAST_SPREAD, own), chiSquare, disagree };
  if (recorder) record(recorder, readings, combined);
  return combined;
}

function record(recorder: Recorder, readings: readonly Reading[], combined: Combined): void {
  const sources = [...new Set(['SORREL', ...readings.flatMap((reading) => methodById(reading.method)?.sources ?? [])])];
  const spreads = readings.map((reading) => ({
    symbol: `sd (${reading.method})`,
    value: reading.sdLog,
    unit: 'ln',
    origin: 'choice' as const,
  }));
  recorder.step({
    symbol: 'ln beta0',
    title: 'mean of the readings, each counted by its certainty',
    formula: 'ln beta0 = sum(ln beta0_i / sd_i^2) / sum(1 / sd_i^2)',
    terms: [
      ...readings.map((reading) => ({
        symbol: readingSymbol(reading.method),
        value: reading.logBeta0,
        unit: 'ln(kg CaCO3/kg/pH)',
        origin: methodById(reading.method) === undefined ? ('entered' as const) : ('step' as const),
      })),
      ...spreads,
    ],
    value: combined.logBeta0,
    unit: 'ln(kg CaCO3/kg/pH)',
    sources,
    basis: 'derived',
  });
  recorder.step({
    symbol: 'chi2',
    title: combined.disagree ? 'the readings differ by more than their errors explain' : 'the readings agree',
    formula: 'chi2 = sum((ln beta0_i - ln beta0)^2 / sd_i^2)',
    terms: [
      { symbol: 'ln beta0', value: combined.logBeta0, unit: 'ln(kg CaCO3/kg/pH)', origin: 'step' },
      { symbol: 'n', value: readings.length, unit: '1', origin: 'choice' },
    ],
    value: combined.chiSquare,
    unit: '1',
    sources: ['common-practice'],
    basis: 'derived',
  });
  recorder.step({
    symbol: 'sd(ln beta0)',
    title: 'how sure the curve is',
    formula: combined.disagree
      ? 'sd = max(0.15, sqrt(1 / sum(1 / sd_i^2)) x sqrt(chi2 / (n - 1)))'
      : 'sd = max(0.15, sqrt(1 / sum(1 / sd_i^2)))',
    terms: [...spreads, { symbol: 'chi2', value: combined.chiSquare, unit: '1', origin: 'step' }],
    value: combined.sdLog,
    unit: 'ln',
    sources: ['SORREL', 'common-practice'],
    basis: 'judgement',
  });
  recorder.step({
    symbol: 'beta0',
    title: 'least resistance of the soil',
    formula: 'beta0 = exp(ln beta0)',
    terms: [{ symbol: 'ln beta0', value: combined.logBeta0, unit: 'ln(kg CaCO3/kg/pH)', origin: 'step' }],
    value: Math.exp(combined.logBeta0),
    unit: 'kg CaCO3/kg/pH',
    sources,
    basis: 'derived',
  });
}

import { finenessClasses } from '@sorrel/almanac/fineness-systems';
import type { Recorder } from '../../derivation/derivation.ts';
import type { Fraction } from '../../units/si.ts';

/** lb in a US ton: indices in lb per ton multiply by it. */
const TON = 2000;

interface Scale {
  readonly name: string;
  readonly unit: 'lb/ton' | '%' | 'score';
  readonly factor: number;
  readonly moisture: boolean;
  readonly fineness: boolean;
}

const plain = (name: string): Scale => ({ name, unit: '%', factor: 100, moisture: false, fineness: true });

/** Results that differ from `NV · FE` in percent. */
const SCALES: Readonly<Record<string, Scale>> = {
  OH: { name: 'ENP', unit: 'lb/ton', factor: TON, moisture: true, fineness: true },
  MN: { name: 'ENP', unit: 'lb/ton', factor: TON, moisture: true, fineness: true },
  IA: { name: 'ECCE', unit: 'lb/ton', factor: TON, moisture: true, fineness: true },
  /** 800 is 2000 lb times the 0.40 of calcium in CaCO3, so pure fine stone scores 800. */
  MO: { name: 'ENM', unit: 'lb/ton', factor: 800, moisture: false, fineness: true },
  OR: { name: 'lime score', unit: 'score', factor: 100, moisture: true, fineness: true },
  /** CCE only, provided the stone is fine-sized. */
  PA: { name: 'CCE', unit: '%', factor: 100, moisture: true, fineness: false },
};

export interface LimeQuality {
  readonly neutralisingValue: Fraction;
  readonly efficiency: Fraction;
  readonly moisture: Fraction;
}

export interface LimeIndex {
  readonly name: string;
  readonly value: number;
  readonly unit: 'lb/ton' | '%' | 'score';
  /** Whether moisture is inside the figure, as the publication has it. */
  readonly includesMoisture: boolean;
}

/**
 * The quality index a region prints: `index = scale · NV · FE · (1 − w)`, moisture only where the publication has it
 * (Ohio, Minnesota, Iowa, Oregon, Pennsylvania). Valid only beside rates calibrated with the same index.
 *
 * @param system almanac name of the fineness system
 * @source table `fineness-formulas` (OHAGF, MNENP memory; WILIME, MOENM, MSUSEL, ALRNV, MSCROPS read; …)
 */
export function limeIndex(system: string, quality: LimeQuality, recorder?: Recorder): LimeIndex {
  const scale = scaleOf(system);
  let value = scale.factor * quality.neutralisingValue;
  if (scale.fineness) value *= quality.efficiency;
  if (scale.moisture) value *= 1 - quality.moisture;
  if (recorder)
    recorder.step({
      symbol: 'index',
      title: `${scale.name} of the lime`,
      formula: `index = ${scale.factor} · NV${scale.fineness ? ' · FE' : ''}${scale.moisture ? ' · (1 − w)' : ''}`,
      terms: [
        { symbol: 'NV', value: quality.neutralisingValue, unit: 'kg CaCO3/kg', origin: 'entered' },
        { symbol: 'FE', value: quality.efficiency, unit: '', origin: 'entered' },
        { symbol: 'w', value: quality.moisture, unit: 'kg/kg', origin: 'entered' },
      ],
      value,
      unit: scale.unit,
      sources: finenessClasses(system)[0]?.sources ?? ['SORREL'],
      basis: finenessClasses(system)[0]?.basis ?? 'memory',
    });
  return { name: scale.name, value, unit: scale.unit, includesMoisture: scale.moisture };
}

/**
 * What a printed index says about the product: effective kg CaCO3 per kg, dry where the index leaves moisture out.
 *
 * @param value the index as printed, in its own unit
 */
export const effectiveFromIndex = (system: string, value: number): number => value / scaleOf(system).factor;

/**
 * Pounds of a product equal to one ton of standard lime: `2000 · 0.90 / NV`.
 *
 * @param neutralisingValue kg CaCO3 per kg (> 0)
 * @source NCLIME
 */
export const poundsEqualToTon = (neutralisingValue: Fraction, standard: Fraction = 0.9): number =>
  (TON * standard) / neutralisingValue;

const scaleOf = (system: string): Scale =>
  SCALES[system] ?? plain(finenessClasses(system)[0]?.index ?? 'effective CCE');

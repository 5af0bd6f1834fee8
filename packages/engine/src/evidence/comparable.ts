import type { Recorder } from '../derivation/derivation.ts';
import type { Fraction, Ph } from '../units/si.ts';
import { fromWaterOneToOne } from './ph-conversion/from-water.ts';
import { isMediaMethod, toWaterPh } from './ph-conversion/to-water-ph.ts';
import type { SoilTest } from './soil-test.ts';
import { coresOf, instrumentSd } from './test-error.ts';

/** One test made comparable: its pH on one scale and the parts of its error. */
export interface Comparable {
  readonly test: SoilTest;
  readonly mean: Ph;
  /** Variance that replicates and cores do not shrink: instrument and conversion. */
  readonly fixed: number;
  readonly cores: number;
}

/** What is known of the place, for conversions that ask for it. A test's own figures come first. */
export interface PlaceFacts {
  readonly clay?: Fraction | undefined;
  readonly organicMatter?: Fraction | undefined;
}

/** Conversions from the test's own scale; a potting-media pH stays on its own. */
export function comparable(test: SoilTest, place?: PlaceFacts, recorder?: Recorder): Comparable | undefined {
  const { ph } = test;
  if (ph === undefined) return undefined;
  const plain = ph.method === 'water-1:1' || isMediaMethod(ph.method);
  const converted = plain
    ? fromWaterOneToOne(ph.value, test)
    : toWaterPh(
        ph,
        {
          conductivity: test.conductivity,
          clay: test.clay ?? place?.clay,
          organicMatter: test.organicMatter ?? place?.organicMatter,
        },
        recorder,
      );
  if (converted === undefined) return undefined;
  if (recorder)
    recorder.step({
      symbol: `pH_${test.id}`,
      title: `Soil test of ${test.date}`,
      formula: plain ? 'pH as read' : 'pH in water',
      terms: [
        plain
          ? { symbol: 'pH read', value: ph.value, unit: 'pH', origin: 'entered' }
          : { symbol: 'pHw', value: converted.mean, unit: 'pH', origin: 'step' },
      ],
      value: converted.mean,
      unit: 'pH',
      sources: ['SORREL'],
      basis: 'judgement',
      note: `read as ${ph.method}`,
    });
  const lab = instrumentSd(test.instrument);
  return { test, mean: converted.mean, fixed: lab * lab + converted.sd * converted.sd, cores: coresOf(test) };
}

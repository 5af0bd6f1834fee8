import { type SamplingRow, sampling } from '@sorrel/almanac/sampling';
import { coresNeeded } from '../evidence/cores-needed.ts';
import { instrumentSd } from '../evidence/test-error.ts';
import type { Place } from '../plan/place.ts';

/** A mixed sample of fewer cores misses the middle of a bed too easily (sampling, row of SORREL). */
export const FEWEST_CORES = 8;
/** More than this nobody takes; the error she wants is then out of reach (SORREL). */
export const MOST_CORES = 40;

export interface CorePlan {
  readonly cores: number;
  /** True when the error asked for would take more than 40 cores. */
  readonly outOfReach: boolean;
  /** Half width, 95 %, of the sample's own error with these cores. */
  readonly sampleError: number;
  /** The same with the laboratory's error on top, which more cores do not shrink. */
  readonly wholeError: number;
}

/**
 * Cores for one mixed sample.
 *
 * @param coreSd spread between single cores, pH units
 * @param halfWidth wanted half width of the 95 % interval of the sample, pH units
 * @source `n = (z s / E)²` MODEL; at least 8, SORREL
 */
export function corePlan(coreSd: number, halfWidth: number): CorePlan {
  const wanted = coresNeeded(coreSd, halfWidth);
  const cores = Math.min(MOST_CORES, Math.max(FEWEST_CORES, wanted));
  const variance = (coreSd * coreSd) / cores;
  const lab = instrumentSd('laboratory');
  return {
    cores,
    outOfReach: wanted > MOST_CORES,
    sampleError: 1.96 * Math.sqrt(variance),
    wholeError: 1.96 * Math.sqrt(variance + lab * lab),
  };
}

/** Rows of the almanac that speak of such a place. */
export const publishedSampling = (place: Pick<Place, 'kind' | 'situation' | 'medium'>): readonly SamplingRow[] => {
  const target =
    place.kind === 'container'
      ? 'container'
      : place.situation === 'lawn'
        ? 'lawn'
        : place.kind === 'bed' && place.medium !== 'mineral'
          ? 'raised bed'
          : 'garden bed';
  return sampling.filter((row) => row.target === target);
};

/** Depth of the cores: as the last test, so that the two can be compared; else the depth that is treated. */
export function sampleDepth(place: Pick<Place, 'tests' | 'depth'>): number {
  const last = place.tests.reduce<Place['tests'][number] | undefined>(
    (best, test) => (best === undefined || test.date > best.date ? test : best),
    undefined,
  );
  return last?.depth ?? place.depth;
}

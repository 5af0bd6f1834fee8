import { type QualityCheck, qualityLimit } from '@sorrel/almanac/quality-limits';

export interface QualityStep {
  readonly check: QualityCheck;
  /** Samples one meter has read before this check; 0 is before the first. */
  readonly after: number;
}

const CHECKS: readonly QualityCheck[] = ['buffer', 'duplicate', 'reference'];

/**
 * The checks of a day: the buffer and the reference soil before the first sample and then regularly, every tenth sample
 * a second time, and the buffer once more after the last one, so that no reading lies outside two checks.
 *
 * @param samples how many samples one meter will read, a whole number from 0
 * @throws RangeError for no whole number
 * @source almanac `quality-limits` (GENERAL, from memory)
 */
export function qualityPlan(samples: number): readonly QualityStep[] {
  if (!Number.isInteger(samples) || samples < 0) throw new RangeError(`${samples} is not a number of samples`);
  if (samples === 0) return [];
  const steps: QualityStep[] = [];
  for (const check of CHECKS) {
    const { every } = qualityLimit(check);
    if (check !== 'duplicate') steps.push({ check, after: 0 });
    for (let after = every; after <= samples; after += every) steps.push({ check, after });
  }
  if (!steps.some(({ check, after }) => check === 'buffer' && after === samples))
    steps.push({ check: 'buffer', after: samples });
  return steps.sort((a, b) => a.after - b.after || CHECKS.indexOf(a.check) - CHECKS.indexOf(b.check));
}

import { type QualityCheck, qualityLimit } from '@sorrel/almanac/quality-limits';

/** What one meter did, in the order of the day. */
export type MeterAct =
  | { readonly did: 'reading' }
  | {
      readonly did: QualityCheck;
      /** False when it failed. */
      readonly sound: boolean;
    };

/**
 * Checks that stand between a meter and its next reading: those of `qualityPlan`, found from what was really done, for a
 * day whose number of samples nobody knows beforehand. A check in the buffer or in reference soil that failed is due
 * again at once, after the meter has been calibrated. A duplicate is not: its sample is read once more instead.
 *
 * @param acts what the meter did so far
 * @param left samples still to be read on this day; at 0 the meter is checked in the buffer a last time
 * @source almanac `quality-limits` (GENERAL, from memory)
 */
export function dueChecks(acts: readonly MeterAct[], left: number): readonly QualityCheck[] {
  const since = (check: QualityCheck): { readonly readings: number; readonly sound: boolean | undefined } => {
    const last = acts.findLastIndex(({ did }) => did === check);
    const act = acts[last];
    const readings = acts.slice(last + 1).filter(({ did }) => did === 'reading').length;
    return { readings, sound: act === undefined || act.did === 'reading' ? undefined : act.sound };
  };
  const due: QualityCheck[] = [];
  const buffer = since('buffer');
  const read = acts.some(({ did }) => did === 'reading');
  if (left > 0 || read) {
    const lastOne = left === 0 && buffer.readings > 0;
    if (buffer.sound !== true || buffer.readings >= qualityLimit('buffer').every || lastOne) due.push('buffer');
    if (since('duplicate').readings >= qualityLimit('duplicate').every) due.push('duplicate');
    const reference = since('reference');
    if (reference.sound !== true || reference.readings >= qualityLimit('reference').every) due.push('reference');
  }
  return due;
}

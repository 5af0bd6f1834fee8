import type { QualityCheck } from '@sorrel/almanac/quality-limits';
import type { Ph } from '../units/si.ts';
import { type ChartPoint, controlChart, SOUND_METER_SD } from './control-chart.ts';
import { type Judged, judgeCheck } from './judge-check.ts';

/** One check of one meter. */
export interface MeterCheck {
  readonly id: string;
  /** Place in the order of everything that meter did. */
  readonly order: number;
  readonly check: QualityCheck;
  readonly expected: Ph;
  readonly shown: Ph;
}

export interface CheckVerdict extends MeterCheck, Judged {
  /** Its point on the control chart; of checks in the buffer only. */
  readonly point?: ChartPoint;
  /** Whether readings after it can be trusted: within the limit, and on the control chart no drift. */
  readonly sound: boolean;
}

/**
 * What each check says of one meter. Checks in the buffer stand on a control chart, which finds a slow drift before a
 * single check is beyond its limit. After a check that is not sound the meter is calibrated, so the chart begins anew.
 *
 * @param checks of one meter
 * @returns verdicts in the order of the day
 * @source NIST_EWMA; limits: almanac `quality-limits`; that the chart begins anew is our judgement (SORREL)
 */
export function meterHistory(checks: readonly MeterCheck[]): readonly CheckVerdict[] {
  let run: number[] = [];
  return [...checks]
    .sort((a, b) => a.order - b.order)
    .map((check) => {
      const judged = judgeCheck(check.check, check.expected, check.shown);
      if (check.check !== 'buffer') return { ...check, ...judged, sound: judged.passed };
      run.push(judged.off);
      const point = controlChart(run, 0, SOUND_METER_SD).at(-1);
      const sound = judged.passed && (point === undefined || point.beyond === 'nothing');
      if (!sound) run = [];
      return { ...check, ...judged, sound, ...(point === undefined ? {} : { point }) };
    });
}

export interface ChartPoint {
  readonly value: number;
  /** Exponentially weighted mean of this value and those before it. */
  readonly trend: number;
  /** Limits of the trend at this point. */
  readonly low: number;
  readonly high: number;
  /** `point`: this value alone lies beyond three standard deviations; `trend`: the trend has left its limits, the meter drifts. */
  readonly beyond: 'nothing' | 'point' | 'trend';
}

/** Weight of the newest value; 0.2 to 0.3 finds a slow drift soonest (NIST_EWMA). */
const NEWEST = 0.2;
/** Width of the limits in standard deviations. */
const WIDTH = 3;

/**
 * A control chart with an exponentially weighted mean, which sees a slow drift before any single check is far off:
 * `z_i = λ x_i + (1 − λ) z_(i−1)`, limits `target ± 3 s sqrt(λ/(2−λ) (1 − (1−λ)^(2i)))`.
 *
 * @param values what the meter was off at each check, in order
 * @param target what the values should be, 0 for differences
 * @param sd standard deviation of one value of a sound meter (> 0)
 * @param newest λ, from 0 to 1
 * @throws RangeError when sd is not positive or λ outside (0, 1]
 * @source NIST_EWMA
 */
export function controlChart(
  values: readonly number[],
  target: number,
  sd: number,
  newest = NEWEST,
): readonly ChartPoint[] {
  if (!(sd > 0)) throw new RangeError(`a standard deviation of ${sd} is not positive`);
  if (!(newest > 0 && newest <= 1)) throw new RangeError(`a weight of ${newest} is not between 0 and 1`);
  let trend = target;
  return values.map((value, index) => {
    trend = newest * value + (1 - newest) * trend;
    const settled = 1 - (1 - newest) ** (2 * (index + 1));
    const half = WIDTH * sd * Math.sqrt((newest / (2 - newest)) * settled);
    const single = Math.abs(value - target) > WIDTH * sd;
    const drifted = Math.abs(trend - target) > half;
    return {
      value,
      trend,
      low: target - half,
      high: target + half,
      beyond: single ? 'point' : drifted ? 'trend' : 'nothing',
    };
  });
}

/** Standard deviation of one check of a sound meter in a buffer, so that the limit of 0.1 is three of them; our judgement (SORREL). */
export const SOUND_METER_SD = 0.1 / 3;

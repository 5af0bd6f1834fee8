import type { Medium } from '../soil/soil.ts';
import type { Ph } from '../units/si.ts';
import { availabilityRow, type Series, seriesFor, TABLE_PH } from './availability.ts';
import { DANGERS, type Danger, NUTRIENTS, type Nutrient } from './nutrient.ts';

/** One small line of the picture: a nutrient or a danger along the pH axis. */
export interface UsableLine {
  readonly subject: Nutrient | Danger;
  readonly danger: boolean;
  /** pH, height of the line, and the band of the table's uncertainty, all heights 0 to 1. */
  readonly points: readonly { readonly ph: Ph; readonly value: number; readonly low: number; readonly high: number }[];
}

/** Everything a drawing needs, as figures: one axis for all lines, today's and the planned pH marked on it. */
export interface UsablePicture {
  readonly low: Ph;
  readonly high: Ph;
  readonly series: Series;
  readonly lines: readonly UsableLine[];
  readonly today?: Ph;
  readonly planned?: Ph;
}

/**
 * The lines of all nutrients and dangers on one pH axis.
 *
 * @param series the line of the medium when left out
 * @source the almanac's `availability`
 */
export function usablePicture(
  medium: Medium,
  marks: { readonly today?: Ph; readonly planned?: Ph } = {},
  series: Series = seriesFor(medium),
): UsablePicture {
  const side = series === 'organic' ? 'organic' : 'mineral';
  const line = (subject: Nutrient | Danger, danger: boolean): UsableLine => {
    const { values, uncertainty } = availabilityRow(subject, danger ? 'risk' : series, side);
    return {
      subject,
      danger,
      points: values.map((value, index) => ({
        ph: TABLE_PH.low + index * TABLE_PH.step,
        value,
        low: Math.max(0, value - uncertainty),
        high: Math.min(1, value + uncertainty),
      })),
    };
  };
  return {
    low: TABLE_PH.low,
    high: TABLE_PH.high,
    series,
    lines: [...NUTRIENTS.map((one) => line(one, false)), ...DANGERS.map((one) => line(one, true))],
    ...(marks.today === undefined ? {} : { today: marks.today }),
    ...(marks.planned === undefined ? {} : { planned: marks.planned }),
  };
}

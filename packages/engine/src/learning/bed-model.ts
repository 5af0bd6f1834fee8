import { run } from '../forecast/kernel.ts';
import { type Scenario, scenario } from '../forecast/scenario.ts';
import type { ForecastInput } from '../forecast/types.ts';
import { dayNumber } from '../units/calendar.ts';
import type { IsoDate, Ph } from '../units/si.ts';
import { type Latents, latentsOf, membersOf } from './latent.ts';
import type { BedRecord } from './types.ts';

/** Two weeks for a young record, four for one of over two years: within 0.015 pH of the forecast's week after the wait. */
const STEP_DAYS = 14;
const LONG_STEP_DAYS = 28;
const LONG_RECORD_DAYS = 730;
/** Records over twenty years take still longer steps. */
const MOST_STEPS = 260;

/** The forecast's own model, run over the past of a bed. */
export interface BedModel {
  readonly input: ForecastInput;
  readonly latents: Latents;
  readonly scenario: Scenario;
  /** pH of each member on each of the days, `[member * days + i]`. */
  readonly predict: (z: Float64Array, count: number) => Float64Array;
}

/**
 * @param start day of the first reading
 * @param days days on which the pH is wanted, none before the start
 * @param before what was known of the pH at the start before any reading
 */
export function bedModel(
  record: BedRecord,
  start: IsoDate,
  days: readonly IsoDate[],
  before: { readonly mean: Ph; readonly sd: number },
): BedModel {
  const first = dayNumber(start);
  const after = days.map((day) => dayNumber(day) - first);
  const last = Math.max(...after);
  const input: ForecastInput = {
    start,
    layer: record.layer,
    curve: record.curve,
    present: before,
    medium: record.medium,
    applications: record.applications.filter(({ date }) => dayNumber(date) <= first + last),
    ...(record.container === undefined ? {} : { container: record.container }),
    ...(record.weather === undefined ? {} : { weather: record.weather }),
    ...(record.yearly === undefined ? {} : { yearly: record.yearly }),
  };
  const stepDays = Math.max(last > LONG_RECORD_DAYS ? LONG_STEP_DAYS : STEP_DAYS, last / MOST_STEPS);
  const steps = Math.max(1, Math.ceil(last / stepDays));
  const shared = scenario(input, { stepDays, steps });
  const latents = latentsOf(input);
  const rows = days.length;
  const predict = (z: Float64Array, count: number): Float64Array => {
    const ph = new Float64Array((steps + 1) * count);
    run(shared, membersOf(latents, z, count), { ph });
    const y = new Float64Array(count * rows);
    for (let i = 0; i < rows; i++) {
      const place = (after[i] as number) / stepDays;
      const step = Math.min(steps - 1, Math.floor(place));
      const share = place - step;
      for (let m = 0; m < count; m++) {
        const from = ph[step * count + m] as number;
        y[m * rows + i] = from + share * ((ph[(step + 1) * count + m] as number) - from);
      }
    }
    return y;
  };
  return { input, latents, scenario: shared, predict };
}

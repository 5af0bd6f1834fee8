import type { Recorder } from '../derivation/derivation.ts';
import { checkForecast } from '../forecast/check.ts';
import { forecast } from '../forecast/forecast.ts';
import { SURFACE_MIX } from '../forecast/layers.ts';
import { thinned } from '../forecast/parameter-set.ts';
import { applicationOf } from '../forecast/reaction.ts';
import { SKETCH_MEMBERS, type Sketch, sketch } from '../forecast/sketch.ts';
import type { Forecast, ForecastApplication, ForecastInput } from '../forecast/types.ts';
import { pastApplications } from '../learning/bed-record.ts';
import type { Learned } from '../learning/types.ts';
import { addMonths } from '../units/calendar.ts';
import type { Metre } from '../units/si.ts';
import { type Evidence, gather } from './evidence.ts';
import type { Place, Settings } from './place.ts';
import { standingLayer } from './pot-layer.ts';
import type { Application } from './recommendation.ts';
import { targetOf } from './target.ts';

export interface OutlookOptions {
  /** 0 to 5; default 3. */
  readonly years?: number;
  /** Where the place has taught its own members, no more of them than this. */
  readonly members?: number;
  readonly seed?: number;
  /** What the record of the place has taught, from an earlier answer: nothing is then learned anew. */
  readonly lesson?: Learned | undefined;
}

/** Older applications than this have done their work: ground limestone reacts within about three years (CON20). */
const STILL_WORKING_MONTHS = 36;

/** Mixed through where the ground is open, else scratched in or laid on. */
export const depthMixed = ({ situation, depth }: Place): Metre =>
  situation === 'open ground' || situation === 'container'
    ? depth
    : situation === 'around plants'
      ? Math.min(SURFACE_MIX, depth)
      : 0;

/** Applications of a plan as the forecast wants them; `share` says which of the later, conditional steps count. */
export const planned = (place: Place, applications: readonly Application[]): ForecastApplication[] =>
  applications.map(({ product, perArea, perVolume, earliest }) =>
    applicationOf(product, perArea ?? (perVolume ?? 0) * place.depth, earliest, depthMixed(place)),
  );

/**
 * Everything a forecast of a place needs, with what is still reacting from earlier years.
 *
 * @returns undefined when no pH is known or nothing tells how much the soil resists
 */
export function outlookInput(
  place: Place,
  settings: Settings,
  applications: readonly ForecastApplication[],
  options: OutlookOptions = {},
  evidence: Evidence = gather(place, targetOf(place), settings, undefined, true, options.lesson),
): ForecastInput | undefined {
  const { present, reconciled, learned } = evidence;
  const layer = standingLayer(place, evidence.layer);
  const curve = reconciled?.curve;
  if (present === undefined || curve === undefined) return undefined;
  const target = targetOf(place);
  const oldest = addMonths(settings.today, -STILL_WORKING_MONTHS);
  const earlier = pastApplications(place, layer, []).filter(({ date }) => date >= oldest && date < present.date);
  const irrigation = place.water?.perYear;
  return {
    start: settings.today,
    years: options.years ?? 3,
    layer,
    curve,
    present,
    medium: place.medium,
    container: place.kind === 'container',
    weather: { ...settings.weather, ...(irrigation === undefined ? {} : { irrigation }) },
    applications: [...earlier, ...applications],
    yearly: {
      ...place.yearly,
      ...(place.water === undefined || irrigation === undefined ? {} : { waterAlkalinity: place.water.alkalinity }),
    },
    ...(target.conflicts.length > 0 ? {} : { range: { low: target.low, high: target.high } }),
    ...(options.members === undefined ? {} : { members: options.members }),
    ...(options.seed === undefined ? {} : { seed: options.seed }),
    ...(learned?.parameters === undefined
      ? {}
      : { parameters: thinned(learned.parameters, options.members ?? Number.POSITIVE_INFINITY) }),
  };
}

/**
 * What the pH of a place will do with a plan, or with nothing done when no applications are given.
 *
 * @returns undefined when no pH is known, nothing tells how much the soil resists, or a figure lies outside the model
 * @source `docs/model.md`
 */
export function outlook(
  place: Place,
  settings: Settings,
  applications: readonly Application[],
  options: OutlookOptions = {},
  recorder?: Recorder,
): Forecast | undefined {
  const input = outlookInput(place, settings, planned(place, applications), options);
  return input === undefined || checkForecast(input).length > 0 ? undefined : forecast(input, recorder);
}

/**
 * The picture of an outlook without its figures, quick enough to follow a slider: rough, and no dose may rest on it.
 *
 * @returns undefined where `outlook` is
 * @source `docs/model.md`
 */
export function outlookSketch(
  place: Place,
  settings: Settings,
  applications: readonly Application[],
  options: OutlookOptions = {},
): Sketch | undefined {
  const few = { members: SKETCH_MEMBERS, ...options };
  const input = outlookInput(place, settings, planned(place, applications), few);
  return input === undefined || checkForecast(input).length > 0 ? undefined : sketch(input);
}

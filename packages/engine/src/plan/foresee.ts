import type { Recorder } from '../derivation/derivation.ts';
import type { Message } from '../derivation/message.ts';
import { presentPh } from '../evidence/present-ph.ts';
import { checkForecast } from '../forecast/check.ts';
import { forecast } from '../forecast/forecast.ts';
import type { AccountYear, Forecast } from '../forecast/types.ts';
import { findMaterial } from '../materials/product.ts';
import type { IsoDate, Kilogram, Ph } from '../units/si.ts';
import { gather } from './evidence.ts';
import { type OutlookOptions, outlookInput, planned } from './outlook.ts';
import type { Place, Settings } from './place.ts';
import type { Application } from './recommendation.ts';
import { targetOf } from './target.ts';

/** A test as it stands in a picture: by itself, on one scale, with its own error. */
export interface SeenTest {
  readonly date: IsoDate;
  readonly ph: Ph;
  readonly sd: number;
  /** It does not fit the others. */
  readonly outlier: boolean;
}

/** Something put on, or to be put on. */
export interface Mark {
  readonly date: IsoDate;
  readonly name: string;
  readonly effect: 'sweetens' | 'sours';
  readonly state: 'done' | 'planned' | 'only if a retest asks';
  readonly mass?: Kilogram;
}

/** All that a picture of a place's pH through time shows. */
export interface Foreseen {
  readonly forecast: Forecast;
  readonly today: IsoDate;
  /** Undefined when the plants share no pH. */
  readonly range?: { readonly low: Ph; readonly high: Ph };
  readonly tests: readonly SeenTest[];
  readonly marks: readonly Mark[];
}

/** Each test by itself, made comparable, oldest first. */
export function seenTests(place: Place, settings: Settings, outliers: ReadonlySet<string> = new Set()): SeenTest[] {
  const media = place.medium === 'soilless';
  return place.tests
    .flatMap((test) => {
      const alone = presentPh([test], test.date, { applications: [], hemisphere: settings.hemisphere, media });
      return alone === undefined
        ? []
        : [{ date: test.date, ph: alone.mean, sd: alone.sd, outlier: outliers.has(test.id) }];
    })
    .sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : a.ph - b.ph));
}

/**
 * The forecast of a place with some applications, and what stands beside it in a picture.
 *
 * @returns the reason when nothing can be foreseen
 * @source `docs/model.md`
 */
export function foresee(
  place: Place,
  settings: Settings,
  applications: readonly Application[],
  options: OutlookOptions = {},
  recorder?: Recorder,
): Foreseen | { readonly why: Message } {
  const target = targetOf(place);
  const evidence = gather(place, target, settings, undefined, true);
  const input = outlookInput(place, settings, planned(place, applications), options, evidence);
  if (input === undefined)
    return { why: { code: evidence.present === undefined ? 'plan.no-forecast-ph' : 'plan.no-forecast-soil' } };
  if (checkForecast(input).length > 0) return { why: { code: 'plan.no-forecast-outside' } };
  const odd = evidence.learned?.tests.filter((test) => test.outlier).flatMap((test) => test.ids);
  return {
    forecast: forecast(input, recorder),
    today: settings.today,
    ...(target.conflicts.length > 0 ? {} : { range: { low: target.low, high: target.high } }),
    tests: seenTests(place, settings, new Set(odd)),
    marks: [...place.applications.map(done), ...applications.map(ahead)].sort((a, b) => (a.date < b.date ? -1 : 1)),
  };
}

const effectOf = (currency: number): Mark['effect'] => (currency < 0 ? 'sours' : 'sweetens');

function done({ date, material, currency }: Place['applications'][number]): Mark {
  const found = findMaterial(material);
  return { date, name: found.ok ? found.value.name : material, effect: effectOf(currency), state: 'done' };
}

const ahead = ({ product, earliest, mass, currency, onlyIfRetest }: Application): Mark => ({
  date: earliest,
  name: product.name,
  effect: effectOf(currency),
  state: onlyIfRetest ? 'only if a retest asks' : 'planned',
  mass,
});

/**
 * What a year like this one does when nothing new is put on: water, feeds, rain, harvest, compost, and what is still
 * reacting from earlier.
 *
 * @returns undefined when nothing can be foreseen
 */
export function yearOfTheSame(place: Place, settings: Settings): AccountYear | undefined {
  // The account is of the central run; the members behind the bands are not needed.
  const seen = foresee(place, settings, [], { years: 1, members: 1 });
  return 'why' in seen ? undefined : seen.forecast.account.years[0];
}

import type { Application, Garden, GardenPlan, Place, Recommendation } from '@sorrel/engine/plan';
import { addDays, type IsoDate } from '@sorrel/engine/units';
import ical, { type ICalCalendar } from 'ical-generator';
import { dosesOf } from './content/doses.ts';
import type { PrintOptions } from './options.ts';
import { once, type Speaker, speakerFor } from './speaker.ts';

export interface CalendarOptions extends PrintOptions {
  /** Moment of writing, an ISO 8601 instant such as `2026-10-20T08:00:00Z`, given by the caller: this room has no clock. */
  readonly stamp: string;
  /** Stays the same for a garden for ever, so that a newer file replaces the events of the older. */
  readonly gardenId: string;
  /** Address of the place in the app, put on its events. */
  readonly url?: (place: Place) => string;
}

/**
 * The plan as an iCalendar file (RFC 5545): an all-day event for each dressing and each retest, as long as its window.
 *
 * @throws RangeError when `stamp` is no instant
 */
export function calendar(garden: Garden, plan: GardenPlan, options: CalendarOptions): string {
  const stamp = new Date(options.stamp);
  if (Number.isNaN(stamp.getTime()))
    throw new RangeError(`${options.stamp} is no instant such as 2026-10-20T08:00:00Z`);
  const speaker = speakerFor(options);
  const book = ical({
    prodId: { company: 'Sorrel', product: 'Garden pH', language: (options.language ?? 'en').toUpperCase() },
    name: oneLine(speaker.word('print.calendar-name', { garden: garden.name })),
  });
  garden.places.forEach((place, index) => {
    const advice = plan.recommendations[index];
    if (advice !== undefined) addPlace(book, place, advice, stamp, options, speaker);
  });
  return `${book.toString().replace(/\r\n$/, '')}\r\n`;
}

function addPlace(
  book: ICalCalendar,
  place: Place,
  advice: Recommendation,
  stamp: Date,
  options: CalendarOptions,
  speaker: Speaker,
): void {
  const add = (what: string, from: IsoDate, to: IsoDate, summary: string, description: readonly string[]): void => {
    const url = options.url?.(place);
    book.createEvent({
      id: `${options.gardenId}-${place.id}-${what}@sorrel`,
      stamp,
      start: day(from),
      // The end of an all-day event is the first day after it.
      end: day(addDays(to, 1)),
      allDay: true,
      summary: oneLine(summary),
      description: [...description, speaker.word('print.local-rules')].map(oneLine).join('\n'),
      ...(url === undefined ? {} : { url }),
    });
  };
  const doses = dosesOf(advice, speaker);
  advice.applications.forEach((application, index) => {
    const dose = doses[index];
    if (dose === undefined) return;
    const { earliest, latest } = application;
    add(`step-${application.number}`, earliest, latest, applySummary(place, application, speaker), [
      speaker.word('print.calendar-window', { from: speaker.day(earliest), to: speaker.day(latest) }),
      speaker.word('print.calendar-weigh', { mass: dose.weigh, scoop: dose.scoop, product: dose.product }),
      ...once(speaker, application.how),
      ...once(speaker, advice.cautions),
    ]);
  });
  const { retest } = advice;
  if (retest !== undefined)
    add('retest', retest.earliest, retest.latest, speaker.word('print.calendar-retest', { place: place.name }), [
      speaker.say(retest.why),
    ]);
}

const applySummary = (place: Place, { number, mass, onlyIfRetest, product }: Application, speaker: Speaker): string =>
  onlyIfRetest
    ? speaker.word('print.calendar-apply-later', { place: place.name, number })
    : speaker.word('print.calendar-apply', { place: place.name, mass: speaker.weight(mass), product: product.name });

/** Midnight UTC, which the calendar library prints as the date alone in every time zone. */
const day = (date: IsoDate): Date => new Date(`${date}T00:00:00Z`);

/** A line of a calendar holds no control characters (RFC 5545, 3.1) and no broken halves of characters. */
const oneLine = (text: string): string => text.replace(/\p{Cs}/gu, '\ufffd').replace(/\p{Cc}+/gu, ' ');

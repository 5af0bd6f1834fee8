import { weight } from '@sorrel/engine/units';
import fc from 'fast-check';
import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import { demoGardens, planned } from '../testing/demo-gardens.ts';
import { calendar } from './index.ts';

const options = { system: 'us', printed: '2026-10-20', stamp: '2026-10-20T08:00:00Z', gardenId: 'g1' } as const;

/** Events as an independent reader (ical.js) sees them. */
const eventsOf = (text: string): ICAL.Event[] =>
  new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent').map((each) => new ICAL.Event(each));

const { garden, plan } = planned('sour-ground-heavy-rain');

describe('the calendar', () => {
  it('has an all-day event for each dressing and each retest, its end exclusive', () => {
    const events = eventsOf(calendar(garden, plan, options));
    const windows = plan.recommendations.flatMap((advice) => [
      ...advice.applications,
      ...(advice.retest ? [advice.retest] : []),
    ]);
    expect(events).toHaveLength(windows.length);
    events.forEach((event, index) => {
      expect(event.startDate.isDate).toBe(true);
      expect(event.startDate.toString()).toBe(windows[index]?.earliest);
      event.endDate.adjust(-1, 0, 0, 0);
      expect(event.endDate.toString()).toBe(windows[index]?.latest);
    });
  });

  it('keeps to RFC 5545: CRLF alone, 75 octets a line, no character torn, UID and DTSTAMP on each event', () => {
    const accented = {
      ...garden,
      name: 'Jardín',
      places: garden.places.map((place) => ({ ...place, name: 'Grüne Möhren 🥕 '.repeat(9) })),
    };
    const bytes = Buffer.from(calendar(accented, plan, options));
    const lines = bytes.toString('latin1').split('\r\n');
    expect(lines.pop()).toBe('');
    for (const line of lines) {
      expect(line).not.toMatch(/[\r\n]/);
      expect(line.length).toBeLessThanOrEqual(75);
      expect(() => new TextDecoder('utf-8', { fatal: true }).decode(Buffer.from(line, 'latin1'))).not.toThrow();
    }
    const events = eventsOf(bytes.toString());
    expect(new Set(events.map((event) => event.uid)).size).toBe(events.length);
    for (const event of events)
      expect(event.component.getFirstPropertyValue('dtstamp')?.toString()).toBe('2026-10-20T08:00:00Z');
  });

  it('keeps the UIDs when the plan changes, so that a newer file replaces the older', () => {
    const uids = (text: string): string[] => eventsOf(text).map((event) => event.uid);
    const later = { ...options, stamp: '2026-11-01T08:00:00Z' };
    expect(uids(calendar(garden, plan, later))).toEqual(uids(calendar(garden, plan, options)));
    expect(calendar(garden, plan, options)).toBe(calendar(garden, plan, options));
  });

  it('carries the weight, the cautions and the address of the place', () => {
    const [event] = eventsOf(calendar(garden, plan, { ...options, url: ({ id }) => `https://garden.example/${id}` }));
    const first = plan.recommendations[0]?.applications[0];
    const mass = weight(first?.mass ?? 0, 'us', 'down');
    expect(event?.summary).toBe(`Long vegetable bed: spread ${mass} of ${first?.product.name}`);
    expect(event?.description).toContain('Wear gloves and eye protection.');
    expect(event?.description).toContain('Any fit day from 12 Oct 2026 to 30 Nov 2026.');
    expect(event?.component.getFirstPropertyValue('url')).toBe('https://garden.example/place-1');
  });

  it('gives back any name as it was, and lets none add a line of its own', () => {
    const nasty = fc.oneof(
      fc.string({ unit: 'grapheme', maxLength: 120 }),
      fc.string({ unit: 'binary', maxLength: 60 }),
      fc.constantFrom('x\r\nEND:VEVENT\r\nBEGIN:VEVENT', 'a;b,c\\n', '"quoted":;', '\ud800half'),
    );
    fc.assert(
      fc.property(nasty, (name) => {
        const places = garden.places.map((place) => ({ ...place, name }));
        const events = eventsOf(calendar({ ...garden, places }, plan, options));
        expect(events).toHaveLength(eventsOf(calendar(garden, plan, options)).length);
        const said = name.replace(/\p{Cs}/gu, '\ufffd').replace(/\p{Cc}+/gu, ' ');
        expect(events[0]?.summary.startsWith(`${said}: spread`)).toBe(true);
      }),
      { numRuns: 40 },
    );
  });

  it('says what is wrong with a stamp that is none, and serves every demo garden', () => {
    expect(() => calendar(garden, plan, { ...options, stamp: 'yesterday' })).toThrow('yesterday is no instant');
    for (const each of demoGardens)
      expect(calendar(each.garden, each.plan, options)).toMatch(/^BEGIN:VCALENDAR\r\n[\s\S]*END:VCALENDAR\r\n$/);
  });
});

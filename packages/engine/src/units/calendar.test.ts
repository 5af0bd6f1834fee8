import fc from 'fast-check';
import { afterEach, describe, expect, it, vi } from 'vitest';
import {
  addDays,
  addMonths,
  dateOfDay,
  dayNumber,
  daysBetween,
  earlierOf,
  isIsoDate,
  laterOf,
  monthOf,
  yearOf,
} from './calendar.ts';

const day = fc.integer({ min: -200_000, max: 200_000 }).map(dateOfDay);

describe('the calendar', () => {
  it('counts the waits after raw manure (NOP_205203: 120 and 90 days)', () => {
    expect(addDays('2026-04-01', 120)).toBe('2026-07-30');
    expect(addDays('2026-04-01', 90)).toBe('2026-06-30');
  });

  it('keeps to the end of a month', () => {
    expect(addMonths('2026-01-31', 1)).toBe('2026-02-28');
    expect(addMonths('2024-01-31', 1)).toBe('2024-02-29');
    expect(addMonths('2024-02-29', 12)).toBe('2025-02-28');
    expect(addMonths('2026-03-31', -1)).toBe('2026-02-28');
    expect(addMonths('2026-11-25', 6)).toBe('2027-05-25');
    expect(addMonths('2026-11-25', 0)).toBe('2026-11-25');
  });

  it('knows a date from what only looks like one', () => {
    for (const date of ['2024-02-29', '2000-02-29', '1999-12-31']) expect(isIsoDate(date)).toBe(true);
    for (const text of [
      '2023-02-29',
      '1900-02-29',
      '2026-13-01',
      '2026-00-10',
      '2026-1-1',
      '26-01-01',
      '',
      'today',
      '2026-01-01T00',
    ])
      expect(isIsoDate(text), text).toBe(false);
    for (const call of [dayNumber, monthOf, yearOf]) expect(() => call('2023-02-29')).toThrow(RangeError);
    expect(() => addMonths('2026-01-01', 0.5)).toThrow(RangeError);
    expect(() => addDays('2026-01-01', 0.5)).toThrow(RangeError);
    expect(() => dateOfDay(1e9)).toThrow(RangeError);
  });

  it('agrees with the epoch: 2000-01-01 is day 10957', () => {
    expect(dayNumber('1970-01-01')).toBe(0);
    expect(dayNumber('2000-01-01')).toBe(10_957);
  });

  it('goes there and back, in order', () => {
    fc.assert(
      fc.property(day, fc.integer({ min: -5000, max: 5000 }), (date, days) => {
        const other = addDays(date, days);
        expect(daysBetween(date, other)).toBe(days);
        expect(addDays(other, -days)).toBe(date);
        expect(earlierOf(date, other)).toBe(days >= 0 ? date : other);
        expect(laterOf(date, other)).toBe(days >= 0 ? other : date);
        // Written dates sort as text, which is why they are written this way.
        expect(date <= other).toBe(days >= 0);
      }),
    );
  });

  it('moves by whole months whatever the day', () => {
    fc.assert(
      fc.property(day, fc.integer({ min: -600, max: 600 }), (date, months) => {
        const moved = addMonths(date, months);
        const count = (text: string) => yearOf(text) * 12 + monthOf(text);
        expect(count(moved) - count(date)).toBe(months);
        const [was, is] = [Number(date.slice(8)), Number(moved.slice(8))];
        expect(is).toBeLessThanOrEqual(was);
        if (is < was) expect(addDays(moved, 1).slice(8)).toBe('01');
      }),
    );
  });
});

describe('in any time zone', () => {
  const own = process.env.TZ;
  afterEach(() => {
    if (own === undefined) delete process.env.TZ;
    else process.env.TZ = own;
  });

  // Samoa had no 30 December 2011; São Paulo no midnight on 4 November 2018; the others lie at the ends of the day.
  it.each(['Pacific/Apia', 'America/Sao_Paulo', 'Pacific/Kiritimati', 'Pacific/Niue', 'Europe/London'])(
    '%s',
    async (zone) => {
      process.env.TZ = zone;
      vi.resetModules();
      const fresh = await import('./calendar.ts');
      expect(Intl.DateTimeFormat().resolvedOptions().timeZone).toBe(zone);
      expect(fresh.addDays('2011-12-29', 1)).toBe('2011-12-30');
      expect(fresh.addMonths('2011-11-30', 1)).toBe('2011-12-30');
      expect(fresh.daysBetween('2011-12-29', '2011-12-31')).toBe(2);
      expect(fresh.addMonths('2018-10-04', 1)).toBe('2018-11-04');
      expect(fresh.addDays('2026-03-28', 2)).toBe('2026-03-30');
      expect(fresh.addMonths('2026-08-31', 6)).toBe('2027-02-28');
    },
  );
});

import { describe, expect, it } from 'vitest';
import { linear, monthTicks, phTicks } from './time-scale.ts';

describe('axes of the forecast', () => {
  it('marks the first days of months, as many as fit', () => {
    expect(monthTicks('2026-10-12', '2027-02-20', 6)).toEqual(['2026-11-01', '2026-12-01', '2027-01-01', '2027-02-01']);
    expect(monthTicks('2026-10-12', '2029-10-12', 7)).toEqual([
      '2027-01-01',
      '2027-07-01',
      '2028-01-01',
      '2028-07-01',
      '2029-01-01',
      '2029-07-01',
    ]);
    expect(monthTicks('2027-01-01', '2029-12-31', 3)).toEqual(['2027-01-01', '2028-01-01', '2029-01-01']);
  });

  it('never marks a day outside, nor more than fit', () => {
    for (let months = 1; months < 70; months++) {
      const to = new Date(Date.UTC(2026, 3 + months, 17)).toISOString().slice(0, 10);
      const ticks = monthTicks('2026-04-17', to, 6);
      expect(ticks.length).toBeLessThanOrEqual(7);
      for (const tick of ticks) expect(tick > '2026-04-17' && tick <= to).toBe(true);
    }
  });

  it('marks half pH steps on a short axis, whole ones on a long one', () => {
    expect(phTicks(4.8, 6.6)).toEqual([5, 5.5, 6, 6.5]);
    expect(phTicks(3.2, 8.1)).toEqual([4, 5, 6, 7, 8]);
  });

  it('maps straight', () => {
    expect(linear(4, 8, 100, 0)(6)).toBe(50);
    expect(linear(4, 4, 7, 9)(4)).toBe(7);
  });
});

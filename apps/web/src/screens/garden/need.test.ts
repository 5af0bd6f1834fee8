import type { Recommendation } from '@sorrel/engine/plan';
import { describe, expect, it } from 'vitest';
import { type Asking, byNeed, countByNeed, distance, needOf } from './need.ts';

const day = '2026-10-12';
const place = (name: string, plan: Partial<Recommendation> | undefined): Asking => ({
  name,
  plan: (plan === undefined ? undefined : { applications: [], ...plan }) as Recommendation | undefined,
});
const target = { low: 6, high: 6.8, aim: 6.4, conflicts: [], basis: 'plants' } as const;
const present = (mean: number) => ({ mean, sd: 0.15, date: '2026-09-14' });
const dose = (earliest: string) => [{ earliest, latest: '2027-06-30', onlyIfRetest: false }] as never;

// Own rule of the design: what is broken, then work, then what must be found out, then retests, then choices, then rest.
describe('what a place asks for', () => {
  it('is known from its decision and the day of its retest', () => {
    expect(needOf(place('a', undefined), day)).toBe('mend');
    expect(needOf(place('a', { decision: 'raise', target }), day)).toBe('do');
    expect(needOf(place('a', { decision: 'find out first', target }), day)).toBe('find out');
    expect(needOf(place('a', { decision: 'not practical', target }), day)).toBe('choose');
    const retest = (earliest: string) =>
      ({ earliest, latest: '2030-01-01', why: { code: 'plan.retest-routine' } }) as never;
    expect(needOf(place('a', { decision: 'leave alone', target, retest: retest('2026-10-12') }), day)).toBe('retest');
    expect(needOf(place('a', { decision: 'leave alone', target, retest: retest('2026-10-13') }), day)).toBe('fine');
  });

  it('orders the garden: kind, then day, then distance from the range', () => {
    const places = [
      place('fine', { decision: 'leave alone', target, present: present(6.4) }),
      place('spring', { decision: 'lower', target, present: present(7.9), applications: dose('2027-04-01') }),
      place('a little sour', { decision: 'raise', target, present: present(5.8), applications: dose('2026-10-12') }),
      place('very sour', { decision: 'raise', target, present: present(4.6), applications: dose('2026-09-01') }),
      place('choose', { decision: 'not practical', target, present: present(8) }),
      place('unread', undefined),
      place('untested', { decision: 'find out first', target }),
    ];
    expect(byNeed(places, day).map((each) => each.name)).toEqual([
      'unread',
      'very sour',
      'a little sour',
      'spring',
      'untested',
      'choose',
      'fine',
    ]);
    expect(countByNeed(places, day)).toEqual({ mend: 1, do: 3, 'find out': 1, retest: 0, choose: 1, fine: 1 });
  });

  it('measures how far outside a pH lies', () => {
    expect(distance({ target, present: present(5.5) } as never)).toBeCloseTo(0.5);
    expect(distance({ target, present: present(7) } as never)).toBeCloseTo(0.2);
    expect(distance({ target, present: present(6.4) } as never)).toBe(0);
    expect(distance({ target } as never)).toBe(0);
  });
});

import { describe, expect, it } from 'vitest';
import { jobsOf, spanOf } from './jobs.ts';

const today = '2026-10-12';
const place = (id: string, plan: object | undefined) => ({ id, name: id, plan }) as never;

// Own rule: a week is today and the six days after it, a season three months.
describe('the work of a garden', () => {
  it('stands in the span in which it can first be done', () => {
    expect(spanOf({ from: '2026-08-01', to: '2026-10-11' }, today)).toBe('overdue');
    expect(spanOf({ from: '2026-08-01', to: '2026-10-12' }, today)).toBe('week');
    expect(spanOf({ from: '2026-10-18', to: '2026-12-01' }, today)).toBe('week');
    expect(spanOf({ from: '2026-10-19', to: '2026-12-01' }, today)).toBe('season');
    expect(spanOf({ from: '2027-01-12', to: '2027-02-01' }, today)).toBe('season');
    expect(spanOf({ from: '2027-01-13', to: '2027-02-01' }, today)).toBe('later');
  });

  it('is every step, retest, question and fault, by day', () => {
    const step = (number: number, earliest: string) => ({ number, earliest, latest: '2027-12-31' });
    const jobs = jobsOf(
      [
        place('limed', {
          decision: 'raise',
          applications: [step(1, '2026-11-01'), step(2, '2027-06-01')],
          retest: { earliest: '2027-05-01', latest: '2027-06-01', why: { code: 'plan.retest-lime' } },
        }),
        place('unknown', { decision: 'find out first', applications: [], ask: [] }),
        place('broken', undefined),
      ],
      today,
    );
    expect(jobs.map((job) => job.key)).toEqual([
      'unknown find',
      'broken mend',
      'limed step 1',
      'limed retest',
      'limed step 2',
    ]);
  });
});

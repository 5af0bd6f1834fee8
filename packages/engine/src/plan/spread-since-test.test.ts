import { describe, expect, it } from 'vitest';
import { readGarden } from '../document/read-garden.ts';
import { planGarden } from './plan-garden.ts';

const today = '2026-10-12';
const planWith = (applications: readonly object[], tests: readonly object[] = []) => {
  const lab = { date: '2026-09-14', by: 'laboratory', ph: { value: 5.2, in: 'water-1:1' }, texture: 'silt loam' };
  const place = { name: 'a', area: '4 m2', soil: { texture: 'silt loam' }, tests: [lab, ...tests], applications };
  const { garden, problems } = readGarden({ garden: 'g', places: [place] }, { today });
  expect(problems).toEqual([]);
  return planGarden(garden).recommendations[0];
};
const lime = (date: string) => ({ date, material: 'calcitic-limestone', amount: '1 kg' });

// Design, "never overshoot": a retest stands between steps. GNLIME and the practice calendar: lime is retested after 6 to 12 months.
describe('a dressing that no test has seen', () => {
  it('puts the retest before the next step, which is then only for afterwards', () => {
    const fresh = planWith([]);
    expect(fresh?.applications[0]).toMatchObject({ onlyIfRetest: false, earliest: today });
    const done = planWith([lime('2026-10-12')]);
    expect(done?.applications.length).toBeGreaterThan(0);
    for (const application of done?.applications ?? []) {
      expect(application.onlyIfRetest).toBe(true);
      expect(application.earliest > '2027-04-12').toBe(true);
    }
    expect(done?.retest?.earliest).toBe('2027-04-12');
    expect(done?.reasons.map((reason) => reason.code)).toContain('plan.step-after-retest');
  });

  it('is no longer in the way once a laboratory has tested after it, but a home reading does not count', () => {
    expect(planWith([lime('2026-05-01')])?.applications[0]?.onlyIfRetest).toBe(false);
    const home = { date: '2026-10-12', by: 'slurry-meter', ph: { value: 5.3, in: 'water-1:1' } };
    expect(planWith([lime('2026-10-01')], [home])?.applications.every((each) => each.onlyIfRetest)).toBe(true);
  });

  it('never asks for a retest in the past', () => {
    const old = readGarden(
      {
        garden: 'g',
        places: [
          {
            name: 'a',
            area: '4 m2',
            soil: { texture: 'silt loam' },
            tests: [{ date: '2024-09-14', by: 'laboratory', ph: { value: 5.0, in: 'water-1:1' } }],
            applications: [lime('2024-10-01')],
          },
        ],
      },
      { today },
    );
    const plan = planGarden(old.garden).recommendations[0];
    expect((plan?.retest?.earliest ?? today) >= today).toBe(true);
    expect(plan?.applications.every((each) => each.onlyIfRetest) ?? true).toBe(true);
  });
});

import { en } from '@sorrel/almanac/words';
import type { Decision } from '@sorrel/engine/plan';
import { slots } from '@sorrel/engine/units';
import { jStat } from 'jstat';
import { describe, expect, it } from 'vitest';
import { demoGardens, demoHandouts, demoPlace } from '../../testing/demo-gardens.ts';
import { speakerFor } from '../speaker.ts';
import { decisionOf, verdictOf } from './decision-words.ts';
import { doNotAdd } from './do-not-add.ts';
import { dosesOf } from './doses.ts';
import { phLine } from './ph-line.ts';
import { byNeed } from './work-sheet-content.ts';

const speaker = speakerFor({ system: 'us', printed: '2026-10-20' });
const decisions: readonly Decision[] = [
  'leave alone',
  'raise',
  'lower',
  'not practical',
  'grow something else',
  'find out first',
];

describe('the pH line', () => {
  it('smears today over the middle 19 in 20 of the normal curve (jStat)', () => {
    const { place, recommendation } = demoPlace('Long vegetable bed');
    const row = phLine([[place, recommendation]], speaker).rows[0];
    const { mean = 0, sd = 0 } = recommendation.present ?? {};
    expect(row?.today?.from).toBeCloseTo(jStat.normal.inv(0.025, mean, sd), 3);
    expect(row?.today?.to).toBeCloseTo(jStat.normal.inv(0.975, mean, sd), 3);
  });

  it('always spans 4 to 8 and everything on it, and says in words what it shows', () => {
    for (const { garden, plan } of demoGardens) {
      const line = phLine(byNeed(garden, plan), speaker);
      expect(line.low).toBeLessThanOrEqual(4);
      expect(line.high).toBeGreaterThanOrEqual(8);
      for (const row of line.rows) {
        for (const ph of [row.today?.from, row.today?.to, row.wanted?.low, row.wanted?.high, row.aim])
          if (ph !== undefined) expect(ph >= line.low && ph <= line.high).toBe(true);
        expect(line.alternative).toContain(row.name);
      }
    }
  });

  it('draws an arrow only where something is to be spread', () => {
    for (const { place, recommendation } of demoHandouts) {
      const row = phLine([[place, recommendation]], speaker).rows[0];
      expect(row?.aim !== undefined).toBe(recommendation.applications.length > 0);
    }
  });
});

describe('words of the pages', () => {
  it('exist for every decision and every month', () => {
    for (const decision of decisions) {
      expect(decisionOf(decision, speaker)).not.toBe('');
      expect(verdictOf(decision, speaker)).not.toBe('');
    }
    for (let month = 1; month <= 12; month++)
      // The Gregorian calendar's months as the language's own formatter (ICU) shortens them.
      expect(speaker.day(`2026-${String(month).padStart(2, '0')}-05`)).toBe(
        `${new Intl.DateTimeFormat('en-US', { month: 'short', timeZone: 'UTC' })
          .format(new Date(Date.UTC(2026, month - 1, 5)))
          .replace(/^/, '5 ')} 2026`,
      );
  });

  it('keep their slots plain', () => {
    for (const [code, template] of Object.entries(en))
      if (code.startsWith('print.')) expect(template.replace(/\{[a-zA-Z]+\}/g, ''), code).not.toMatch(/[{}]/);
    expect(slots(en['print.days'])).toEqual(['from', 'to']);
  });
});

describe('what not to add', () => {
  const { recommendation } = demoPlace('Long vegetable bed');
  it('never forbids what the plan asks for, and always forbids its opposite', () => {
    expect(doNotAdd({ ...recommendation, decision: 'raise' })).toContain('print.do-not-sulfur');
    expect(doNotAdd({ ...recommendation, decision: 'raise' })).not.toContain('print.do-not-lime');
    expect(doNotAdd({ ...recommendation, decision: 'lower' })).toContain('print.do-not-lime');
    expect(doNotAdd({ ...recommendation, decision: 'lower' })).not.toContain('print.do-not-sulfur');
  });

  it('says something for every decision, and no lime where the ground is too limy', () => {
    for (const decision of decisions) expect(doNotAdd({ ...recommendation, decision }).length).toBeGreaterThan(0);
    const limy = demoPlace('Yellowing roses').recommendation;
    expect(doNotAdd(limy)).toContain('print.do-not-lime');
  });
});

describe('a dose in words', () => {
  it('marks a scoop whose density is from memory, and asks for a weighing where none is known', () => {
    const { recommendation } = demoPlace('Long vegetable bed');
    const [application] = recommendation.applications;
    if (application === undefined) throw new RangeError('the demo bed has no dressing');
    expect(dosesOf(recommendation, speaker)[0]?.scoop).toMatch(/cups\*$/);
    const own = { ...application, product: { ...application.product, density: 1234 } };
    expect(dosesOf({ ...recommendation, applications: [own] }, speaker)[0]?.scoop).toMatch(/cups$/);
    const { density: _, ...unknown } = application.product;
    const unmeasured = { ...application, product: unknown };
    expect(dosesOf({ ...recommendation, applications: [unmeasured] }, speaker)[0]?.scoop).toContain(
      'Weigh one level cup',
    );
  });
});

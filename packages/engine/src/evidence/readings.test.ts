import { describe, expect, it } from 'vitest';
import { dayNumber, isIsoDate } from '../units/calendar.ts';
import { BUFFER_SETS, bufferPhAt, buffersOf } from './calibration-buffer.ts';
import { carbonateOf, limeUnknown } from './carbonate.ts';
import { coresNeeded } from './cores-needed.ts';
import { DETECTABLE, DETECTABLE_SAME_LAB, detectableChange } from './detectable-change.ts';
import { aluminiumSaturation, baseSaturationOf, effectiveCec, sodiumShare } from './exchangeable.ts';
import { carbonateByAcid, carbonateByVinegar, fizzClass } from './fizz.ts';
import { saltClass } from './media-salts.ts';
import { checkMeter, nernstSlope } from './meter-slope.ts';
import { matterFromCarbon, organicCarbonOf, organicMatterOf } from './organic-matter.ts';
import { addSalt, saltToWeigh } from './salt-slurry.ts';
import { seasonOf, springRange } from './season.ts';
import type { SoilTest } from './soil-test.ts';

const test = (more: Partial<SoilTest> = {}): SoilTest => ({
  id: 'a',
  date: '2025-04-15',
  instrument: 'laboratory',
  depth: 0.15,
  ...more,
});

describe('coresNeeded', () => {
  it('follows the table of cores', () => {
    // n = (z s/E)², 95 % and 90 %.
    const table = [
      [0.2, 0.1, 16, 11],
      [0.3, 0.1, 35, 25],
      [0.4, 0.1, 62, 44],
      [0.2, 0.2, 4, 3],
      [0.3, 0.2, 9, 7],
    ] as const;
    for (const [sd, half, n95, n90] of table) {
      expect(coresNeeded(sd, half)).toBe(n95);
      expect(coresNeeded(sd, half, 1.645)).toBe(n90);
    }
    expect(() => coresNeeded(0.3, 0)).toThrow(RangeError);
  });
});

describe('detectableChange', () => {
  it('is 0.28 within a laboratory and 0.42 between', () => {
    // 2·√2·0.1 (FERRARI_VERMEULEN) and 1.96·√2·0.15.
    expect(DETECTABLE_SAME_LAB).toBeCloseTo(0.28, 2);
    expect(DETECTABLE).toBeCloseTo(0.42, 2);
    const a = test({ laboratory: 'A', cores: 12, ph: { value: 6, method: 'water-1:1' } });
    expect(detectableChange(a, a, 0.15, 0.15)).toBe(DETECTABLE_SAME_LAB);
    expect(detectableChange(a, { ...a, laboratory: 'B' }, 0.15, 0.15)).toBe(DETECTABLE);
    expect(detectableChange(a, { ...a, instrument: 'strip' }, 0.15, 0.6)).toBeGreaterThan(1);
  });
});

describe('days', () => {
  it('are those of the calendar', () => {
    for (const date of ['1970-01-01', '2000-02-29', '2024-12-31', '1999-03-01', '2100-03-01'])
      expect(dayNumber(date)).toBe(Date.parse(`${date}T00:00:00Z`) / 86400000);
    expect(isIsoDate('2024-02-29')).toBe(true);
    expect(isIsoDate('2025-02-29')).toBe(false);
    expect(isIsoDate('2025-13-01')).toBe(false);
    expect(isIsoDate('15.4.2025')).toBe(false);
  });
});

describe('calibration buffers', () => {
  it('have the printed value at their temperature', () => {
    // Instrument manual, technical buffers (BUFFER_US).
    expect(bufferPhAt('nominal 4/7/10', 10, 10)).toBe(10.18);
    expect(bufferPhAt('nominal 4/7/10', 7, 22)).toBeCloseTo(7.012, 6);
    expect(bufferPhAt('nominal 4/7/10', 7, 60)).toBeUndefined();
    expect(bufferPhAt('nominal 4/7/10', 7, -1)).toBeUndefined();
    expect(BUFFER_SETS).toHaveLength(2);
    expect(buffersOf('nominal 4/7/10')).toEqual([4, 7, 10]);
  });

  it('judge a meter by its slope', () => {
    // 59.16 mV per pH at 25 °C.
    expect(nernstSlope(25)).toBeCloseTo(59.16, 2);
    expect(checkMeter({ ph: 4, millivolt: 177 }, { ph: 7, millivolt: 0 }, 25)).toMatchObject({ good: true });
    expect(checkMeter({ ph: 4, millivolt: 150 }, { ph: 7, millivolt: 0 }, 25).good).toBe(false);
    expect(() => checkMeter({ ph: 7, millivolt: 0 }, { ph: 7, millivolt: 1 }, 25)).toThrow(RangeError);
  });
});

describe('carbonate', () => {
  it('by acid', () => {
    // SCMA 19D1: few bubbles 1 to 5, readily seen 6 to 10, low foam 10 to 15 %.
    expect(carbonateByAcid('strong')).toEqual({ fraction: 0.12, low: 0.1, high: 0.15 });
    expect(fizzClass('acid', 'low foam')).toMatchObject({ published_low: 10, published_high: 15 });
    expect(fizzClass('acid', 'few bubbles, very slight')?.class).toBe('very slight');
    expect(fizzClass('acid', 'purple')).toBeUndefined();
  });

  it('by vinegar, where silence proves nothing', () => {
    // Kansas: vigorous 3 % and more, mild 1 to 2, only heard under 1.
    expect(carbonateByVinegar('vigorous')?.fraction).toBeGreaterThan(0.03);
    expect(carbonateByVinegar('mild')).toEqual({ fraction: 0.015, low: 0.01, high: 0.02 });
    expect(carbonateByVinegar('silent')).toBeUndefined();
    expect(carbonateOf([test({ vinegarFizz: 'silent' })]).how).toBe('not tested');
  });

  it('measured before fizz, newest first', () => {
    const tests = [
      test({ vinegarFizz: 'vigorous' }),
      test({ date: '2023-01-01', carbonate: 0.01 }),
      test({ date: '2024-01-01', carbonate: 0.02 }),
    ];
    expect(carbonateOf(tests)).toMatchObject({ fraction: 0.02, how: 'measured' });
    expect(carbonateOf(tests.slice(0, 1)).how).toBe('vinegar fizz');
    expect(limeUnknown(carbonateOf([]), 7.5, 7.2)).toBe(true);
  });
});

describe('organic matter', () => {
  it('keeps what was measured and doubles carbon', () => {
    // Pribyl 2010: 2.0; 1.724 only for older reports.
    expect(matterFromCarbon(0.02)).toBe(0.04);
    expect(matterFromCarbon(0.02, 1.724)).toBeCloseTo(0.03448, 9);
    expect(organicMatterOf({ organicMatter: 0.05, organicCarbon: 0.02 })).toBe(0.05);
    expect(organicCarbonOf({ organicMatter: 0.05 })).toBe(0.025);
    expect(organicCarbonOf({})).toBeUndefined();
  });
});

describe('exchangeable cations', () => {
  it('give saturations', () => {
    const one = test({ calcium: 0.04, magnesium: 0.01, potassium: 0.005, sodium: 0.005, aluminium: 0.02, cec: 0.12 });
    expect(effectiveCec(one)).toBeCloseTo(0.08, 12);
    expect(aluminiumSaturation(one)).toBeCloseTo(0.25, 12);
    expect(baseSaturationOf(one)).toBeCloseTo(0.5, 12);
    expect(sodiumShare(one)).toBeCloseTo(0.005 / 0.12, 12);
    expect(effectiveCec(test({ calcium: 0.04 }))).toBeUndefined();
    expect(baseSaturationOf(test({ baseSaturation: 0.66 }))).toBe(0.66);
    // A limed soil's extract holds dissolved lime: never over 100 %.
    expect(baseSaturationOf(test({ calcium: 0.2, magnesium: 0.02, cec: 0.1 }))).toBe(1);
  });
});

describe('potting mixes', () => {
  it('read the same salt differently by method', () => {
    // 2.6 mS/cm is extreme in 1:2, normal in an extract, low in a pour-through (UMASS_MEDIA).
    expect(saltClass('media-1:2', 0.26)).toBe('extreme');
    expect(saltClass('media-extract', 0.26)).toBe('normal');
    expect(saltClass('pour-through', 0.26)).toBe('low');
    expect(saltClass('pour-through', 0.27)).toBe('normal');
    expect(saltClass('pour-through', -1)).toBeUndefined();
  });
});

describe('salt slurry', () => {
  it('needs 2.94 g a litre and ends at 1:2 in 0.01 M', () => {
    // University of Florida soil pH procedure (UF_PH).
    expect(saltToWeigh(0.02, 1) * 1000).toBeCloseTo(2.94, 2);
    expect(addSalt(1, 1, 0.02)).toEqual({ liquid: 2, molar: 0.01 });
  });
});

describe('season', () => {
  it('shifts water pH by 0.1 to 0.3, and about 0.5 after drought', () => {
    // Virginia Cooperative Extension 1998.
    expect(springRange(5.7).low).toBeCloseTo(5.8, 9);
    expect(springRange(5.7).high).toBeCloseTo(6, 9);
    expect(springRange(5.7, true).low).toBeCloseTo(6.2, 9);
    expect(seasonOf('2025-10-01')).toBe('autumn');
    expect(seasonOf('2025-10-01', 'south')).toBe('spring');
    expect(seasonOf('2025-12-01')).toBe('winter');
  });
});

import { textureUk } from '@sorrel/almanac/texture-uk';
import { describe, expect, it } from 'vitest';
import { textureByFeel } from './feel-test.ts';
import { textureFromJar } from './jar-test.ts';
import { settlingTime, waterViscosity } from './settling.ts';
import { textureClassUk } from './texture-uk.ts';

describe('textureClassUk', () => {
  it('follows the limits of the almanac table everywhere on a 1 % grid', () => {
    const rules = textureUk
      .filter((row) => row.class !== 'organic')
      .map((row) => {
        const js = row.rule
          .replace(/([\d.]+)<=(\w+)<([\d.]+)/g, '($1<=$2&&$2<$3)')
          .replaceAll(' and ', '&&')
          .replaceAll(' or ', '||');
        return { name: row.class, test: new Function('sand', 'silt', 'clay', `return ${js}`) };
      });
    for (let sand = 0; sand <= 100; sand++)
      for (let silt = 0; silt <= 100 - sand; silt++) {
        const clay = 100 - sand - silt;
        expect(textureClassUk({ sand, silt, clay })).toBe(rules.find(({ test }) => test(sand, silt, clay))?.name);
      }
  });

  it('calls over 20 % organic matter organic', () => {
    // AHDB texture page (AHDB_TEX).
    expect(textureClassUk({ sand: 0.4, silt: 0.4, clay: 0.2 }, 0.21)).toBe('organic');
    expect(textureClassUk({ sand: 0.4, silt: 0.4, clay: 0.2 }, 0.2)).toBe('clay loam');
  });
});

describe('settlingTime', () => {
  it('gives 45 s for sand and 7.7 h for clay through 10 cm at 20 °C', () => {
    // Stokes, density 2650; handbook figures (GENERAL).
    expect(settlingTime(0.00005, 0.1, 20)).toBeCloseTo(45, 0);
    expect(settlingTime(0.000002, 0.1, 20) / 3600).toBeCloseTo(7.7, 1);
  });

  it('is quicker in warm water and slower for fine grains', () => {
    // Viscosity of water 1.002 mPa·s at 20 °C, 0.890 at 25 °C: standard tables, from memory.
    expect(waterViscosity(20) * 1000).toBeCloseTo(1.002, 2);
    expect(waterViscosity(25) * 1000).toBeCloseTo(0.89, 2);
    expect(settlingTime(0.00005, 0.1, 10)).toBeGreaterThan(settlingTime(0.00005, 0.1, 20));
    expect(settlingTime(0.00002, 0.1) / settlingTime(0.00004, 0.1)).toBeCloseTo(4, 9);
  });

  it('refuses a length of nothing', () => {
    expect(() => settlingTime(0, 0.1)).toThrow(RangeError);
  });
});

describe('textureFromJar', () => {
  it('reads three heights', () => {
    const read = textureFromJar({ afterMinute: 0.04, afterSixHours: 0.08, atEnd: 0.1 });
    expect(read).toMatchObject({ ok: true, value: { name: 'loam', basis: 'jar' } });
  });

  it('says which height is wrong and how to measure it', () => {
    const read = textureFromJar({ afterMinute: 0.05, afterSixHours: 0.03, atEnd: 0.1 });
    expect(read).toMatchObject({ ok: false, problems: [{ field: 'afterSixHours', value: 0.03 }] });
    expect(textureFromJar({ afterMinute: 0, afterSixHours: 0, atEnd: 0 }).ok).toBe(false);
  });
});

describe('textureByFeel', () => {
  it('goes by ribbon and feel', () => {
    // Thien's flow chart as printed by Colorado State (CSU_FEEL): under 1 inch, 1 to 2 inches, over 2 inches.
    expect(textureByFeel({ ball: false, ribbon: 0, feel: 'gritty' }).name).toBe('sand');
    expect(textureByFeel({ ball: true, ribbon: 0, feel: 'gritty' }).name).toBe('loamy sand');
    expect(textureByFeel({ ball: true, ribbon: 0.02, feel: 'smooth' }).name).toBe('silt loam');
    expect(textureByFeel({ ball: true, ribbon: 0.04, feel: 'neither' }).name).toBe('clay loam');
    expect(textureByFeel({ ball: true, ribbon: 0.06, feel: 'gritty' }).name).toBe('sandy clay');
  });
});

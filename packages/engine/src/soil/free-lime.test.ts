import { describe, expect, it } from 'vitest';
import { carbonateOf } from '../evidence/carbonate.ts';
import type { SoilTest } from '../evidence/soil-test.ts';
import { calcitePh, freeLimeClass, freeLimeOf, sulfurForCarbonate } from './free-lime.ts';

const test = (more: Partial<SoilTest>): SoilTest => ({
  id: 'a',
  date: '2025-04-01',
  instrument: 'laboratory',
  depth: 0.15,
  ...more,
});
const decide = (more: Partial<SoilTest>, ph: number) => freeLimeOf(carbonateOf([test(more)]), ph);

describe('freeLimeOf', () => {
  it('classes carbonate by what can be done', () => {
    // Own classes on the stoichiometry of sulfur; RHS: any fizz cannot realistically be acidified.
    expect(freeLimeClass(0)).toBe('none');
    expect(freeLimeClass(0.002)).toBe('workable');
    expect(freeLimeClass(0.008)).toBe('small beds only');
    expect(freeLimeClass(0.02)).toBe('do not acidify in ground');
  });

  it('takes vinegar that fizzes seriously and vinegar that is silent not at all', () => {
    expect(decide({ vinegarFizz: 'vigorous' }, 7.8).class).toBe('do not acidify in ground');
    expect(decide({ vinegarFizz: 'mild' }, 7.8).class).toBe('do not acidify in ground');
    expect(decide({ vinegarFizz: 'heard only' }, 7.8).class).toBe('small beds only');
    expect(decide({ vinegarFizz: 'silent' }, 7.8).class).toBe('test first');
  });

  it('asks for a test before it believes a high pH', () => {
    expect(decide({}, 6.8).class).toBe('none');
    expect(decide({}, 7.5).messages.map((one) => one.code)).toEqual(['soil.test-for-lime']);
    expect(decide({}, 8.2).messages.map((one) => one.code)).toEqual(['soil.lime-likely']);
  });

  it('suspects sodium above 8.4', () => {
    // University of California extension text (UC-BB).
    expect(decide({ carbonate: 0.01 }, 8.4).sodiumSuspected).toBe(false);
    expect(decide({ carbonate: 0.01 }, 8.6).sodiumSuspected).toBe(true);
  });
});

describe('lime and sulfur', () => {
  it('needs 0.635 kg of sulfur a square metre for 1 % lime in 15 cm', () => {
    // Stoichiometry, 15.24 cm at 1.3 g/cm³ (CHEM).
    expect(sulfurForCarbonate(0.01, 0.1524 * 1300)).toBeCloseTo(0.635, 3);
  });

  it('holds 8.2 in air, 7.6 at 0.3 % and 7.3 at 1 % carbon dioxide', () => {
    expect(calcitePh(0.00042)).toBeCloseTo(8.2, 1);
    expect(calcitePh(0.003)).toBeCloseTo(7.6, 1);
    expect(calcitePh(0.01)).toBeCloseTo(7.3, 1);
  });
});

import { finenessSystemNames } from '@sorrel/almanac/fineness-systems';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createRecorder, gaps } from '../../derivation/derivation.ts';
import { classFactor, efficiencyFromPassing, factorClasses } from './class-factors.ts';
import { efficiencyOfShares, efficiencyOfSieves } from './efficiency.ts';
import { passingOf, sievesFromRetained } from './gradation.ts';
import { meshOpening, openingOf } from './screen.ts';

const screens = (passing: Record<number, number>) =>
  Object.entries(passing).map(([mesh, percent]) => ({
    opening: meshOpening(Number(mesh)) ?? Number.NaN,
    passing: percent / 100,
  }));
const efficiency = (system: string, passing: Record<number, number>) => {
  const found = efficiencyOfSieves(system, screens(passing));
  if (!found.ok) throw new Error(found.problems[0]?.message);
  return found.value.efficiency;
};
const complete = finenessSystemNames.filter(({ state }) => state === 'complete').map(({ system }) => system);

/** A stack of screens with what passes them, finer screens passing less. */
const stack = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 9, maxLength: 9 }).map((shares) => {
  const sorted = [...shares].sort((a, b) => b - a);
  return [4, 8, 10, 20, 40, 50, 60, 100, 200].map((mesh, at) => ({
    opening: meshOpening(mesh) ?? 0,
    passing: sorted[at] ?? 0,
  }));
});

describe('fineness efficiency', () => {
  it('gives the worked examples of the publications', () => {
    expect(efficiency('IA', { 4: 100, 8: 90, 60: 55 })).toBeCloseTo(0.7, 12); // WILIME
    expect(efficiency('AL', { 10: 90, 60: 50 }) * 90).toBeCloseTo(63, 10); // ALRNV legal minimum
    expect(efficiency('MI', { 8: 95, 60: 50 })).toBeCloseTo(0.725, 12); // MSUSEL rule
    expect(efficiency('NY_CCA', { 20: 95, 60: 70, 100: 50 })).toBeCloseTo(0.76, 12); // NYCCA rule
    expect(efficiency('NY_FS7', { 20: 95, 60: 70, 100: 50 })).toBeCloseTo(0.77, 12); // NYFS7 rule
  });

  // BCLIME limestone A: printed classes sum to 99.0 and give 85.28.
  it('uses printed classes as they are and says that they miss 100 %', () => {
    const mm = (mesh: number) => meshOpening(mesh) ?? 0;
    const found = efficiencyOfShares('OH', [
      { finerThan: mm(60), share: 0.788 },
      { coarserThan: mm(60), finerThan: mm(20), share: 0.1 },
      { coarserThan: mm(20), finerThan: mm(8), share: 0.024 },
      { coarserThan: mm(8), share: 0.078 },
    ]);
    expect(found.ok && found.value.efficiency).toBeCloseTo(0.8528, 10);
    expect(found.ok && found.value.warnings[0]).toEqual({
      code: 'materials.fineness-sum',
      parameters: { total: '99 %' },
    });
  });

  // HUANG07 table cell.
  it('has the class factors of pots', () => {
    expect(classFactor(factorClasses('CONTAINER_D7'), { finerThan: 0.85e-3, coarserThan: 0.25e-3 })).toBe(0.4);
  });

  it('agrees between the form a publication prints and the sum over classes', () => {
    fc.assert(
      fc.property(stack, (sieves) => {
        for (const system of ['IA', 'MS', 'KY', 'AL']) {
          const printed = efficiencyOfSieves(system, sieves);
          const summed = efficiencyFromPassing(factorClasses(system), passingOf(sieves));
          if (!printed.ok || Math.abs(printed.value.efficiency - summed) > 1e-9) return false;
        }
        return true;
      }),
    );
  });

  it('is never less for a product no coarser on any screen, and lies between 0 and 1', () => {
    fc.assert(
      fc.property(
        stack,
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.constantFrom(...complete),
        (sieves, towards, system) => {
          const finer = sieves.map(({ opening, passing }) => ({ opening, passing: passing + towards * (1 - passing) }));
          const [a, b] = [efficiencyOfSieves(system, sieves), efficiencyOfSieves(system, finer)];
          return (
            a.ok &&
            b.ok &&
            b.value.efficiency >= a.value.efficiency - 1e-12 &&
            a.value.efficiency >= -1e-12 &&
            b.value.efficiency <= 1 + 1e-12
          );
        },
      ),
    );
  });

  it('reads a stack by what stays on each screen as by what passes it', () => {
    const retained = sievesFromRetained([
      { opening: meshOpening(8) ?? 0, share: 0.05 },
      { opening: meshOpening(60) ?? 0, share: 0.45 },
    ]);
    const found = efficiencyOfSieves('MI', retained);
    expect(found.ok && found.value.efficiency).toBeCloseTo(efficiency('MI', { 8: 95, 60: 50 }), 12);
  });

  it('interpolates on the logarithm of the opening between screens the label gives', () => {
    const at = passingOf([
      { opening: 1e-3, passing: 0.9 },
      { opening: 1e-4, passing: 0.3 },
    ]);
    expect(at(Math.sqrt(1e-7))).toBeCloseTo(0.6, 12);
    expect(at(2e-3)).toBe(1);
    expect(at(5e-5)).toBe(0.3);
    expect(at(0.99e-3)).toBe(0.9);
  });

  it('warns when the label has no screen as fine as the rule', () => {
    const found = efficiencyOfSieves('NY_CCA', screens({ 20: 95, 60: 70 }));
    expect(found.ok && found.value.warnings.map(({ code }) => code)).toEqual(['materials.fineness-beyond-screens']);
  });

  it('refuses rules whose factors nobody could retrieve, unknown rules and impossible sieves', () => {
    for (const system of ['IN', 'TN', 'NE', 'NSW_AU', 'XX']) {
      const found = efficiencyOfSieves(system, screens({ 8: 95, 60: 50 }));
      expect(found.ok, system).toBe(false);
      if (!found.ok) expect(found.problems[0]?.fix).toContain('OH');
    }
    expect(efficiencyOfSieves('OH', screens({ 8: 50, 60: 95 })).ok).toBe(false);
    expect(efficiencyOfSieves('OH', []).ok).toBe(false);
  });

  it('shows its working for every rule', () => {
    for (const system of complete) {
      const recorder = createRecorder();
      efficiencyOfSieves(system, screens({ 8: 95, 60: 50 }), recorder);
      expect(gaps(recorder.derivation()), system).toEqual([]);
    }
  });
});

describe('screens', () => {
  it('are read as people write them', () => {
    for (const text of ['60', '60 mesh', 'No. 60', '#60', '0.25 mm', '250 um', '250 µm'])
      expect(openingOf(text), text).toBeCloseTo(0.25e-3, 9);
    expect(openingOf('fine')).toBeUndefined();
    expect(openingOf('61')).toBeUndefined();
  });
});

import { isSource } from '@sorrel/almanac/sources';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gaps } from '../src/derivation/index.ts';
import type { Product } from '../src/materials/material.ts';
import { productFrom } from '../src/materials/product.ts';
import { capFor } from '../src/plan/cap.ts';
import { actingPerKg } from '../src/plan/dressings.ts';
import { type Place, planGarden, recommend } from '../src/plan/index.ts';
import { firstCurrency, ground, lime, plant, settings, sourGround, sulfur } from './gardens.ts';

const run = (place: Place, products: readonly Product[] = [lime, sulfur]) => recommend(place, products, settings);
const withPh = (place: Place, value: number): Place => ({
  ...place,
  tests: place.tests.map((test) => ({ ...test, ph: { value, method: 'water-1:1' as const } })),
});
const need = (place: Place) => run(place).requirement?.best ?? 0;
const check = (property: fc.IProperty<[Place]> | fc.IProperty<[Place, number]>) =>
  fc.assert(property as fc.IProperty<unknown[]>, { numRuns: 200 });
const wide = (place: Place): Place => ({ ...place, target: { low: 6, high: 7, aim: 6.5 } });
const share = fc.double({ min: 0.1, max: 0.9, noNaN: true });

describe('laws of the plan', () => {
  it('gives no dose inside the range', () => {
    check(
      fc.property(ground(), share, (place, part) => {
        const { low, high } = place.target ?? { low: 6, high: 7 };
        const result = run(withPh(place, low + part * (high - low)));
        expect(result.decision).toBe('leave alone');
        expect(result.applications).toEqual([]);
        expect(result.requirement).toBeUndefined();
      }),
    );
  });

  it('never limes a place above its range and never sours one below it', () => {
    check(
      fc.property(ground(), (place) => {
        const result = run(place);
        const ph = result.present?.mean ?? 0;
        for (const { currency } of result.applications) {
          if (ph < result.target.low) expect(currency).toBeGreaterThan(0);
          if (ph > result.target.high) expect(currency).toBeLessThan(0);
        }
        if (ph < result.target.low) expect(result.decision).not.toBe('lower');
        if (ph > result.target.high) expect(result.decision).not.toBe('raise');
      }),
    );
  });

  it('needs more lime the further the pH is below the aim, all else equal', () => {
    check(
      fc.property(sourGround, share, (place, part) => {
        // Without a buffer reading, which would itself change with the pH.
        const bare = wide({ ...place, tests: place.tests.map(({ buffer: _, cec: __, ...test }) => test) });
        expect(need(withPh(bare, 5.6 - part))).toBeGreaterThan(need(withPh(bare, 5.6 - part / 2)));
      }),
    );
  });

  it('needs lime in proportion to the depth', () => {
    check(
      fc.property(sourGround, (place) => {
        const one = need(wide({ ...place, depth: 0.1 }));
        const two = need(wide({ ...place, depth: 0.2 }));
        if (one > 0 && two > 0) expect(two / one).toBeCloseTo(2, 6);
      }),
    );
  });

  it('needs less where stones take up the room', () => {
    check(
      fc.property(sourGround, (place) => {
        const bare = need(wide({ ...place, coarseFragments: 0 }));
        const stony = need(wide({ ...place, coarseFragments: 0.3 }));
        if (bare > 0) expect(stony / bare).toBeCloseTo(0.7, 6);
      }),
    );
  });

  it('needs at least as much for a heavier texture', () => {
    check(
      fc.property(sourGround, (place) => {
        const tests = place.tests.map(({ buffer: _, cec: __, ...test }) => ({ ...test, organicMatter: 0.03 }));
        const of = (sand: number, silt: number, clay: number) =>
          need(
            wide({
              ...place,
              tests,
              bulkDensity: 1300,
              texture: { name: 'loam', parts: { sand, silt, clay }, basis: 'measured' },
            }),
          );
        expect(of(0.4, 0.35, 0.25)).toBeGreaterThan(of(0.6, 0.3, 0.1));
      }),
    );
  });

  it('weighs out in proportion to the area, and two halves of a bed sum to the bed', () => {
    check(
      fc.property(sourGround, share, (place, part) => {
        const whole = run(place);
        const a = run({ ...place, area: place.area * part });
        const b = run({ ...place, area: place.area * (1 - part) });
        expect(a.decision).toBe(whole.decision);
        whole.applications.forEach((application, index) => {
          const sum = (a.applications[index]?.mass ?? 0) + (b.applications[index]?.mass ?? 0);
          expect(sum).toBeCloseTo(application.mass, 6);
        });
      }),
    );
  });

  it('weighs out in inverse proportion to the neutralising value, and swapping material keeps the currency', () => {
    check(
      fc.property(sourGround, fc.double({ min: 0.5, max: 1.05, noNaN: true }), (place, value) => {
        const made = productFrom('ag-lime', { neutralisingValue: value, efficiency: 0.7 });
        if (!made.ok) throw new Error('product');
        // Where no cap binds, both give the same currency.
        const free = wide({ ...place, depth: 0.08, situation: 'open ground' });
        const strong = run(free, [lime]).applications[0];
        const weak = run(free, [made.value]).applications[0];
        if (strong === undefined || weak === undefined) return;
        const caps = [capFor(lime, 'open ground').currency, capFor(made.value, 'open ground').currency];
        if (Math.min(...caps) <= Math.max(strong.currency, weak.currency) * 1.001) return;
        expect(weak.currency).toBeCloseTo(strong.currency, 9);
        expect(weak.mass * actingPerKg(made.value)).toBeCloseTo(strong.mass * actingPerKg(lime), 6);
      }),
    );
  });

  it('exceeds no published maximum in any application', () => {
    check(
      fc.property(ground(), (place) => {
        for (const application of run(place).applications)
          expect(application.perArea ?? 0).toBeLessThanOrEqual(
            capFor(application.product, place.situation).mass * (1 + 1e-6),
          );
      }),
    );
  });

  it('keeps the chance of passing the safe end for the first dressing', () => {
    check(
      fc.property(ground(), (place) => {
        const { overshootChance } = run(place);
        if (overshootChance !== undefined) expect(overshootChance).toBeLessThanOrEqual(settings.overshootChance + 1e-6);
      }),
    );
  });

  it('gives a smaller first dressing to the more careful', () => {
    check(
      fc.property(sourGround, (place) => {
        const bold = recommend(wide(place), [lime], { ...settings, overshootChance: 0.2 });
        const careful = recommend(wide(place), [lime], { ...settings, overshootChance: 0.02 });
        if (careful.decision === 'raise')
          expect(firstCurrency(careful.applications)).toBeLessThanOrEqual(firstCurrency(bold.applications) * 1.03);
      }),
    );
  });

  it('puts a retest between any two dressings and dates them in order', () => {
    check(
      fc.property(ground(), (place) => {
        const { applications, retest } = run(place);
        for (const application of applications) {
          expect(application.earliest <= application.latest).toBe(true);
          expect(application.onlyIfRetest).toBe(application.number > 1);
          if (application.number > 1 && retest !== undefined) expect(application.earliest > retest.earliest).toBe(true);
        }
        const dates = applications.map(({ earliest }) => earliest);
        expect([...dates].sort()).toEqual(dates);
      }),
    );
  });

  it('never plans more than the need in all its steps together', () => {
    check(
      fc.property(ground(), (place) => {
        const { applications, requirement } = run(place);
        const sum = applications.reduce((total, { currency }) => total + Math.abs(currency), 0);
        if (requirement !== undefined) expect(sum).toBeLessThanOrEqual(Math.abs(requirement.best) * (1 + 1e-9));
      }),
    );
  });

  it('carries cautions with every dose', () => {
    check(
      fc.property(ground(), (place) => {
        const { applications, cautions } = run(place);
        if (applications.length > 0) expect(cautions.map(({ code }) => code)).toContain('materials.caution-label');
      }),
    );
  });

  it('never doses on a home reading, whatever it says', () => {
    check(
      fc.property(ground(), (place) => {
        for (const instrument of ['slurry-meter', 'colour-kit', 'strip', 'probe'] as const) {
          const result = run({ ...place, tests: place.tests.map((test) => ({ ...test, instrument })) });
          expect(result.applications).toEqual([]);
        }
      }),
    );
  });

  it('gives no rate on a pH alone, and says what to find out', () => {
    check(
      fc.property(sourGround, (place) => {
        const { texture: _, ...bare } = wide(place);
        const result = run({
          ...bare,
          tests: place.tests.map(({ id, date, instrument, depth, ph }) => ({
            id,
            date,
            instrument,
            depth,
            ...(ph ? { ph } : {}),
          })),
        });
        expect(result.applications).toEqual([]);
        expect(result.decision).toBe('find out first');
        expect(result.ask.length).toBeGreaterThan(0);
      }),
    );
  });

  it('never sours ground with raised lead or much free lime', () => {
    check(
      fc.property(ground(), (place) => {
        const leaded = run({ ...place, tests: place.tests.map((test) => ({ ...test, lead: 150e-6 })) });
        const limy = run({ ...place, tests: place.tests.map((test) => ({ ...test, carbonate: 0.05 })) });
        expect(leaded.decision).not.toBe('lower');
        expect(limy.decision).not.toBe('lower');
      }),
    );
  });

  it('names the pair when two plants share no pH, and doses nothing', () => {
    check(
      fc.property(ground(), (place) => {
        const { target: _, ...rest } = place;
        const mixed = run({
          ...rest,
          plants: [
            { ...plant(4.2, 5.2), name: 'A' },
            { ...plant(6.4, 7.2), name: 'B' },
          ],
        });
        expect(mixed.target.conflicts).toEqual([{ a: 'A', b: 'B' }]);
        expect(mixed.decision).toBe('grow something else');
        expect(mixed.applications).toEqual([]);
      }),
    );
  });

  it('gives every answer a complete derivation whose sources resolve', () => {
    check(
      fc.property(ground(), (place) => {
        const { derivation } = recommend(place, [lime, sulfur], settings, { explain: true });
        if (derivation === undefined) throw new Error('no derivation');
        expect(gaps(derivation)).toEqual([]);
        for (const step of derivation.steps) {
          for (const key of step.sources) expect(isSource(key), `${step.symbol}: ${key}`).toBe(true);
          for (const term of step.terms)
            if (term.source !== undefined) expect(isSource(term.source), term.source).toBe(true);
        }
      }),
    );
  });

  it('says the same with and without the derivation', () => {
    check(
      fc.property(ground(), (place) => {
        const { derivation: _, ...explained } = recommend(place, [lime, sulfur], settings, { explain: true });
        expect(explained).toEqual(run(place));
      }),
    );
  });

  it('is the same answer every time, and changes nothing it was given', () => {
    check(
      fc.property(ground(), (place) => {
        const before = structuredClone(place);
        expect(run(place)).toEqual(run(place));
        expect(place).toEqual(before);
      }),
    );
  });

  it('does not take the same bag twice: a garden shares one stock', () => {
    check(
      fc.property(sourGround, (place) => {
        const stock: Product = { ...lime, onHand: 1 };
        const places = [1, 2, 3].map((n) => ({ ...wide(place), id: `p${n}` }));
        const { recommendations, shopping } = planGarden({
          name: 'g',
          places,
          products: [stock],
          settings,
          currencySymbol: '',
        });
        const used = recommendations
          .flatMap(({ applications }) => applications)
          .filter(({ onlyIfRetest }) => !onlyIfRetest)
          .reduce((sum, { mass }) => sum + mass, 0);
        for (const line of shopping) {
          expect(line.needed).toBeCloseTo(used, 6);
          expect(line.buy).toBeCloseTo(Math.max(0, used - 1), 6);
        }
      }),
    );
  });
});

import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createRecorder, gaps } from '../derivation/derivation.ts';
import { acidShare, boricAcidShare, dihydrogenPhosphateShare, freeIonFactor } from './chemistry.ts';
import { manganeseIndex } from './manganese-index.ts';

describe('forms of acids', () => {
  // chem-text (memory): pKa 2.15, 7.20, 12.35 of phosphoric acid, 9.24 of boric acid, dilute, 25 °C.
  it.each([
    [5, 0.992],
    [6, 0.941],
    [7.2, 0.5],
    [8, 0.137],
  ])('phosphate at pH %d', (ph, share) => expect(dihydrogenPhosphateShare(ph)).toBeCloseTo(share, 2));
  it('boric acid keeps its hydrogen below pH 8', () => {
    expect(boricAcidShare(7)).toBeCloseTo(0.994, 3);
    expect(boricAcidShare(8)).toBeCloseTo(0.946, 3);
  });
  it('add up to one', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 14, noNaN: true }), (ph) => {
        const shares = [0, 1, 2, 3].map((lost) => acidShare('phosphate', lost, ph));
        expect(shares.reduce((sum, each) => sum + each, 0)).toBeCloseTo(1, 12);
      }),
    );
  });
  it('refuse a form that is not there', () => expect(() => acidShare('boric acid', 2, 7)).toThrow(RangeError));
});

describe('free ions', () => {
  // lindsay-1979 (memory): slopes −3 for iron and aluminium, −2 for zinc, copper and manganese, +2 for molybdate.
  it.each([
    ['Fe', 1e-3],
    ['Al', 1e-3],
    ['Zn', 1e-2],
    ['Cu', 1e-2],
    ['Mn', 1e-2],
    ['Mo', 1e2],
  ])('%s changes by its slope for one unit up', (element, factor) =>
    expect((freeIonFactor(element, 5.5, 6.5) ?? 0) / factor).toBeCloseTo(1, 9),
  );
  it('say nothing of other elements', () => expect(freeIonFactor('K', 5, 6)).toBeUndefined());
});

// njaes-levels (read): index 101.7 + 3.75 Mn − 15.2 pH; 4 mg/kg at pH 6 gives 25.5.
it('works out the manganese index and records it', () => {
  const recorder = createRecorder();
  expect(manganeseIndex(4e-6, 6, recorder)).toBeCloseTo(25.5, 9);
  expect(gaps(recorder.derivation())).toEqual([]);
  expect(() => manganeseIndex(-1e-6, 6)).toThrow(RangeError);
});

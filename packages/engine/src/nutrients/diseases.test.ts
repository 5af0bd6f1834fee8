import { diseases } from '@sorrel/almanac/diseases';
import { findPlant } from '@sorrel/almanac/plants';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Place } from '../plan/place.ts';
import { plantRangeOf } from '../plan/plant-range.ts';
import { targetOf } from '../plan/target.ts';
import { diseaseTarget } from './disease-target.ts';
import { diseaseRisk, diseasesOf, diseaseTrend, findDisease, isHost, worstAndLeast } from './diseases.ts';
import { potFlag } from './pot-flag.ts';
import { weedEvidence } from './weeds.ts';

const plant = (name: string) => {
  const row = findPlant(name);
  if (row === undefined) throw new Error(name);
  return plantRangeOf(row);
};
const disease = (name: string) => {
  const row = findDisease(name);
  if (row === undefined) throw new Error(name);
  return row;
};
const place = (names: string[], present?: string[]): Place => ({
  id: 'a',
  name: 'A',
  kind: 'bed',
  situation: 'open ground',
  medium: 'mineral',
  area: 3,
  depth: 0.15,
  plants: names.map(plant),
  tests: [],
  applications: [],
  ...(present === undefined ? {} : { diseases: present }),
});

describe('diseases and pH', () => {
  // clubroot-ca: above 7.2; scab-wiki: below 5.2; take-all-utah: favoured above 6.5.
  it('are favoured on one side of the published limit and never promised away on the other', () => {
    expect(diseaseRisk(disease('clubroot'), 6.2).kind).toBe('favoured');
    expect(diseaseRisk(disease('clubroot'), 7.3)).toEqual({
      kind: 'quietened',
      words: 'usually suppressed, not guaranteed',
    });
    expect(diseaseRisk(disease('scab'), 6).kind).toBe('favoured');
    expect(diseaseRisk(disease('take-all patch'), 7).kind).toBe('favoured');
    expect(diseaseRisk(disease('damping-off'), 6).kind).toBe('no limit');
  });
  // fus-tomato-1971: less wilt from 6.0 to 7.0; fus-wheat: most crown rot at 6, least at 4 and 7.
  it('go the way trials went', () => {
    expect(diseaseTrend(disease('fusarium wilt'), 6, 7)).toBe('falls');
    expect(diseaseTrend(disease('fusarium wilt'), 7, 6)).toBe('rises');
    expect(worstAndLeast(disease('fusarium crown rot'), [4, 6, 7])).toEqual({ highest: [6], lowest: [4, 7] });
  });
  it('know their hosts by family or name', () => {
    expect(isHost(disease('clubroot'), 'radish')).toBe(true);
    expect(isHost(disease('clubroot'), 'tomato')).toBe(false);
    expect(diseasesOf('potato').map(({ key }) => key)).toContain('common-scab');
  });
});

describe('the target of a bed with a disease', () => {
  it('moves above the limit of clubroot for cabbages', () => {
    expect(targetOf(place(['cabbage'])).low).toBeLessThan(7);
    const target = targetOf(place(['cabbage'], ['clubroot']));
    expect(target.low).toBe(7.2);
    expect(target.aim).toBeGreaterThanOrEqual(7.2);
  });
  it('moves below the limit of scab for potatoes', () => {
    const target = targetOf(place(['potato'], ['common-scab']));
    expect([target.high, target.low <= 5]).toEqual([5.2, true]);
  });
  it('says that clubroot and scab cannot share a bed, and then moves nothing', () => {
    const found = diseaseTarget([plant('cabbage'), plant('potato')], ['clubroot', 'scab']);
    expect(found.conflicts).toEqual([{ a: 'Clubroot', b: 'Common scab' }]);
    expect([found.low, found.high]).toEqual([undefined, undefined]);
    expect(targetOf(place(['cabbage', 'potato'], ['clubroot', 'scab']))).toEqual(
      targetOf(place(['cabbage', 'potato'])),
    );
  });
  it('keeps low under high when one disease sets each end', () => {
    const target = targetOf(place(['tomato', 'creeping bentgrass'], ['fusarium-wilt', 'take-all-patch']));
    expect([target.low, target.high]).toEqual([6.5, 6.5]);
  });
  it('leaves potting mixes alone, whose pH is read on another scale', () => {
    const pot = { ...place(['cabbage']), medium: 'soilless' as const };
    expect(targetOf({ ...pot, diseases: ['clubroot'] })).toEqual(targetOf(pot));
  });
  it('leaves the gardener’s own figures and beds without a host alone', () => {
    const own = { ...place(['cabbage'], ['clubroot']), target: { low: 6, high: 6.5 } };
    expect(targetOf(own).low).toBe(6);
    expect(targetOf(place(['tomato'], ['clubroot']))).toEqual(targetOf(place(['tomato'])));
  });
  it('never asks a plant for a pH it does not stand, whatever is present', () => {
    const names = ['cabbage', 'potato', 'tomato', 'carrot', 'blueberry', 'radish', 'petunia', 'wheat'];
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.constantFrom(...names), { minLength: 1, maxLength: 4 }),
        fc.uniqueArray(fc.constantFrom(...diseases.map(({ key }) => key), 'the pip'), { maxLength: 5 }),
        (grown, present) => {
          const plants = grown.map(plant);
          const { low, high } = diseaseTarget(plants, present);
          for (const each of plants) {
            if (low !== undefined)
              expect(low).toBeLessThanOrEqual(Math.max(each.high, each.toleratesHigh ?? each.high + 1));
            if (high !== undefined)
              expect(high).toBeGreaterThanOrEqual(Math.min(each.low, each.toleratesLow ?? each.low - 1));
          }
          const target = targetOf(place(grown, present));
          expect(Number.isFinite(target.aim)).toBe(true);
        },
      ),
    );
  });
});

describe('pots', () => {
  // umd-2006, umd-2008, canr-substrate (read).
  it.each([
    ['petunia', 6.5, 'iron deficiency risk'],
    ['Zonal geraniums', 5.2, 'iron and manganese toxicity risk'],
    ['New Guinea impatiens', 4.6, 'iron and manganese toxicity risk'],
    ['calibrachoa', 5.8, 'ok'],
    ['something else', 6, 'ok'],
  ])('%s at %d: %s', (crop, ph, flag) => expect(potFlag(crop, ph).flag).toBe(flag));
});

describe('weeds', () => {
  // fao-crop-db (read): dandelion from 4.5 to 8.3. growing-food (read): several heath plants together.
  it('a single weed tells nothing or a faint hint, a stand of several a fair one, and none of them the pH', () => {
    expect(weedEvidence(['dandelions'])).toMatchObject({ lean: 'nothing', strength: 'none' });
    expect(weedEvidence(['sheep sorrel'])).toMatchObject({ lean: 'sour', strength: 'weak' });
    expect(weedEvidence(['sheep sorrel', 'bracken', 'gorse'])).toMatchObject({ lean: 'sour', strength: 'fair' });
    expect(weedEvidence(['sheep sorrel', 'bracken', 'gorse', 'stinging nettle']).strength).toBe('weak');
  });
  it('always ends with the advice to test', () => {
    fc.assert(
      fc.property(fc.array(fc.string({ maxLength: 20 }), { maxLength: 6 }), (names) => {
        expect(weedEvidence(names).messages.at(-1)?.code).toBe('nutrients.weeds-test-first');
      }),
    );
  });
});

import { findAnyPlant } from '@sorrel/almanac/half-known-plants';
import { plants } from '@sorrel/almanac/plants';
import { describe, expect, it } from 'vitest';
import { readGarden } from '../document/read-garden.ts';
import { planGarden } from '../plan/plan-garden.ts';
import { limitsOf, plantRangeOf } from '../plan/plant-range.ts';
import { say } from '../units/say.ts';
import { plantInPlace, plantsApart } from './plant-in-place.ts';

const pot = { kind: 'container', pots: { count: 1, volume: '30 L' } };
const bed = { size: '1 x 3 m', soil: { texture: 'loam' } };
const tested = (ph: number, by = 'laboratory') => ({ tests: [{ date: '2026-09-01', by, ph: { value: ph } }] });

function look(name: string, entry: object) {
  const { garden } = readGarden({ garden: 'T', places: [{ name: 'Here', ...entry }] }, { today: '2026-10-01' });
  const plan = planGarden(garden).recommendations;
  const [plant, place, first] = [findAnyPlant(name), garden.places[0], plan[0]];
  if (plant === undefined || place === undefined || first === undefined) throw new Error(name);
  const found = plantInPlace(plant, place, first);
  return {
    ...found,
    codes: found.reasons.map(({ code }) => code),
    said: found.reasons.map((each) => say(each, 'metric')),
  };
}

describe('a plant in a place', () => {
  // fao-crop-db, read: tomato 5.5 to 6.8 in the ground.
  it('suits where the pH lies in its best range and nothing moves it', () => {
    expect(look('tomato', { ...bed, ...tested(6.4), plants: ['tomato'] })).toMatchObject({
      verdict: 'suits',
      there: true,
    });
  });
  it('may suit only after the plan, and then says both', () => {
    const found = look('cabbage', { ...bed, ...tested(5.2), plants: ['cabbage'] });
    expect(found.verdict).toBe('suits after the plan');
    expect(found.codes).toEqual(['placing.plant-below', 'placing.planned-inside']);
  });
  it('does not suit where it is too sour or too limy, with the reason', () => {
    const found = look('blueberry, highbush', { ...bed, ...tested(7.4), plants: ['cabbage'] });
    expect(found.verdict).toBe('does not suit');
    expect(found.codes).toContain('placing.plant-too-limy');
    expect(found.apart).toEqual(['Cabbage']);
    expect(found.said.at(-1)).toMatch(/Keep .* and .* apart/);
  });
  it('is not known without a test, nor where no range is published for the medium', () => {
    expect(look('tomato', bed).codes).toEqual(['placing.plant-untested']);
    expect(look('calibrachoa', { ...bed, ...tested(6) })).toMatchObject({ verdict: 'not known' });
    expect(look('calibrachoa', { ...bed, ...tested(6) }).codes).toEqual(['placing.only-pots-known']);
    expect(look('yarrow', { ...bed, ...tested(6) }).codes).toEqual(['placing.no-best-known']);
  });
  it('goes by the range for pots in a potting mix', () => {
    // umass-2023: calibrachoa and petunia in pots 5.4 to 6.2.
    expect(look('calibrachoa', { ...pot, ...tested(5.8) }).range).toMatchObject({ low: 5.4, high: 6.2 });
    expect(look('petunia', { ...pot, ...tested(5.8) }).range).toMatchObject({ low: 5.4, high: 6.2 });
    expect(look('tomato', { ...pot, ...tested(5.8) }).codes).toContain('placing.no-pot-range');
  });
  it('lets a disease that is there override the range, only for a plant that catches it', () => {
    // clubroot-ca: keep above 7.2.
    const sick = { ...bed, ...tested(6.6), diseases: ['clubroot'] };
    expect(look('cabbage', sick).range?.low).toBe(7.2);
    expect(look('cabbage', sick).codes).toContain('nutrients.disease-above');
    expect(look('tomato', sick)).toMatchObject({ verdict: 'suits', codes: [] });
  });
  it('says when the gap is smaller than the error of the test', () => {
    expect(look('cabbage', { ...bed, ...tested(5.9, 'strip') }).codes).toContain('placing.plant-within-error');
    expect(look('cabbage', { ...bed, ...tested(4.9) }).codes).not.toContain('placing.plant-within-error');
  });
});

describe('plants to keep apart', () => {
  it('are exactly those whose ranges share no pH, the widest gap first', () => {
    const all = plants.map(plantRangeOf);
    for (const plant of all.slice(0, 40)) {
      const apart = plantsApart(plant, all);
      const shares = (other: (typeof all)[number]) =>
        Math.max(other.low, plant.low) <= Math.min(other.high, plant.high);
      expect(new Set(apart)).toEqual(new Set(all.filter((other) => other.key !== plant.key && !shares(other))));
      expect(limitsOf(plant).low).toBeLessThanOrEqual(plant.low);
    }
  });
});

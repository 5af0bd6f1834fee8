import { describe, expect, it } from 'vitest';
import { add, beginGarden, type Content, correct, remove } from '../../data/write.ts';
import { dayOf, dueOf, duplicateOf, unread } from './day-model.ts';

const garden = beginGarden({ garden: 'x', soilDay: { date: '2026-05-02' } });
const bag = (code: string) => add(garden.id, 'place', { name: code, sample: { code, neighbourhood: 'Mill Lane' } });
const reading = (place: string, value: number, meter = 'A') =>
  add(garden.id, 'reading', { date: '2026-05-02', by: 'slurry-meter', ph: { value, in: 'water-1:1' }, meter }, place);
const check = (content: Partial<Content<'quality'>>, place?: string) => {
  const whole = { date: '2026-05-02', check: 'buffer' as const, meter: 'A', expected: 7, shown: 7, ...content };
  const entry = add(garden.id, 'quality', whole);
  return place === undefined ? entry : { ...entry, place };
};
const numbered = (entries: readonly ReturnType<typeof bag>[]) =>
  entries.map((entry, index) => ({ number: index + 1, entry }));

describe('dayOf', () => {
  const [first, second] = [bag('A001'), bag('A002')];
  it('knows samples, what is unread and which checks are due', () => {
    const day = dayOf(numbered([garden, first, second]));
    expect(day.samples.map(({ code }) => code)).toEqual(['A001', 'A002']);
    expect(day.neighbourhoods).toEqual(['Mill Lane']);
    expect(unread(day).length).toBe(2);
    expect(dueOf(day, 'A')).toEqual(['buffer', 'reference']);
  });

  it('lists what a drifting meter read, and drops it once it was read again', () => {
    const wrong = reading(first.id, 6.9);
    const good = [check({}), check({ check: 'reference', expected: 6.2, shown: 6.2 })];
    const drift = [...good, wrong, check({ shown: 7.2 })];
    const day = dayOf(numbered([garden, first, second, ...drift]));
    expect(day.repeat).toMatchObject([{ id: wrong.id, why: 'meter', meter: 'A' }]);
    expect(dueOf(day, 'A')).toEqual(['buffer']);
    const again = [check({}), remove(garden.id, wrong.id), reading(first.id, 6.7)];
    const later = dayOf(numbered([garden, first, second, ...drift, ...again]));
    expect(later.repeat).toEqual([]);
    expect(later.samples[0]?.ph).toBe(6.7);
    expect(dueOf(later, 'A')).toEqual([]);
  });

  it('takes a sample whose two readings differ from the list of no meter, and says why', () => {
    const one = reading(first.id, 6.1);
    const day = dayOf(
      numbered([
        garden,
        first,
        check({}),
        one,
        check({ check: 'duplicate', expected: 6.1, shown: 6.5 }, first.id),
        check({}),
      ]),
    );
    expect(day.repeat).toMatchObject([{ id: one.id, why: 'duplicate', sample: { code: 'A001' } }]);
  });

  it('chooses the earliest of the last ten for a second reading, each once', () => {
    const bags = Array.from({ length: 12 }, (_, index) => bag(`B${index + 1}`));
    const day = dayOf(numbered([garden, ...bags, ...bags.map(({ id }) => reading(id, 6))]));
    expect(duplicateOf(day, 'A', new Set())?.code).toBe('B3');
    expect(duplicateOf(day, 'A', new Set([bags[2]?.id ?? '']))?.code).toBe('B4');
    expect(duplicateOf(day, 'Z', new Set())).toBeUndefined();
  });

  it('prefers the laboratory to a reading, and follows a correction', () => {
    const test = add(
      garden.id,
      'test',
      { date: '2026-05-09', by: 'laboratory', ph: { value: 5.8, in: 'water-1:1' } },
      first.id,
    );
    const renamed = correct(garden.id, first.id, 'place', { name: 'A009', sample: { code: 'A009' } });
    const [sample] = dayOf(numbered([garden, first, reading(first.id, 6.4), test, renamed])).samples;
    expect(sample).toMatchObject({ code: 'A009', ph: 5.8 });
  });
});

import { findPlant } from '@sorrel/almanac/plants';
import type { Arrangement } from '@sorrel/engine/placing';
import { assembleRecord, emptyRecord, withEntries } from '@sorrel/store/record';
import { describe, expect, it } from 'vitest';
import type { Entry } from '../../data/garden-store.ts';
import { add, beginGarden } from '../../data/write.ts';
import { planRecord } from '../../engine/garden-plan.ts';
import { takingOver } from './taking-over.ts';

const garden = beginGarden({ garden: 'test' });
const bed = add(garden.id, 'place', { name: 'Bed', area: '4 m2', plants: ['tomato', 'leek'] });
const corner = add(garden.id, 'place', { name: 'Corner', area: '2 m2', plants: ['carrot'] });
const own = { plant: 'Old pea', low: 6, high: 7 };
const planted = add(garden.id, 'planting', { date: '2026-04-01', plant: 'onion' }, bed.id);

const ONION = findPlant('onion')?.name ?? '';

const numbered = (entries: readonly Entry[]) => entries.map((entry, at) => ({ number: at + 1, entry }));
const start = [garden, bed, corner, planted];

function taken(growing: readonly string[]) {
  const record = withEntries(emptyRecord(garden.id), numbered(start));
  const assembled = assembleRecord(record);
  if (assembled === undefined) throw new Error('no garden');
  const planned = planRecord({ id: garden.id, ...assembled }, '2026-11-01').places;
  const season = growing.map((plant) => ({ plant, key: plant, area: 1, stays: false, fixed: false }));
  const places = [
    { place: 'place-1', name: 'Bed', seasons: [[], season], move: undefined, reasons: [] },
    { place: 'place-2', name: 'Corner', seasons: [[], []], move: undefined, reasons: [] },
  ];
  const found = takingOver({
    arrangement: { places } as unknown as Arrangement,
    season: 2,
    planned,
    wished: [own, 'cabbage'],
    garden: garden.id,
    things: record.all(),
    today: '2026-11-01',
  });
  const after = withEntries(emptyRecord(garden.id), numbered([...start, ...found.entries]));
  return { ...found, plants: assembleRecord(after)?.document.places.map(({ plants }) => plants) };
}

describe('taking an arrangement over', () => {
  it('writes the plants of the season with the words they were entered with, and leaves other places alone', () => {
    const { plants, places } = taken(['Cabbage', 'Old pea', 'Leek']);
    expect(plants).toEqual([['cabbage', own, 'leek'], ['carrot']]);
    expect(places).toBe(1);
  });

  it('keeps a planting that is part of it, and lifts one that is not', () => {
    expect(taken([ONION, 'Leek']).plants?.[0]).toEqual(['leek', 'onion']);
    expect(taken(['Leek']).plants?.[0]).toEqual(['leek']);
  });

  it('writes nothing where nothing changes or nothing was placed', () => {
    expect(taken(['Tomato', 'Leek', ONION]).entries).toEqual([]);
    expect(taken([]).entries).toEqual([]);
  });
});

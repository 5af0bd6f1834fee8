import { readGarden } from '@sorrel/engine/document';
import { describe, expect, it } from 'vitest';
import { emptyDraft, entryOf } from './draft.ts';
import { faultsOf } from './faults.ts';

const faults = (draft: Partial<typeof emptyDraft>, others: readonly string[] = []) => {
  const entry = entryOf({ ...emptyDraft, name: 'Bed', ...draft });
  return faultsOf(entry, others, readGarden({ garden: 'Test', places: [entry] }, { today: '2026-10-12' }).problems);
};

describe('faults beside their fields', () => {
  it('finds none in a good place', () => {
    expect(faults({ size: '4 x 8 ft', depth: '6 in', plants: ['tomato'] })).toEqual({});
  });

  it('says each where it was typed', () => {
    expect(Object.keys(faults({ name: ' ' }))).toContain('name');
    expect(Object.keys(faults({}, ['bed']))).toEqual(['name']);
    expect(Object.keys(faults({ size: 'large' }))).toEqual(['size']);
    expect(Object.keys(faults({ depth: '6 acres' }))).toEqual(['depth']);
    expect(Object.keys(faults({ organicMatter: 'much' }))).toEqual(['organicMatter']);
    expect(Object.keys(faults({ plants: ['no such plant at all'] }))).toEqual(['plants']);
    expect(Object.keys(faults({ kind: 'container', count: 'four', volume: '40 L' }))).toEqual(['count']);
    expect(Object.keys(faults({ kind: 'container', count: '4', volume: '40 kg' }))).toEqual(['volume']);
  });

  it('tells what to write instead', () => {
    expect(faults({ depth: '6 acres' }).depth).toMatch(/in|cm/);
  });
});

import { readGarden } from '@sorrel/engine/document';
import { describe, expect, it } from 'vitest';
import { contentOf, draftOf, freshSample, isCode } from './sample-draft.ts';

describe('contentOf', () => {
  it('makes a place of the code alone', () => {
    const content = contentOf(freshSample('A001'));
    expect(content).toEqual({ name: 'A001', sample: { code: 'A001' }, kind: 'bed' });
    expect(readGarden({ garden: 'x', places: [content] }, { today: '2026-05-02' }).problems).toEqual([]);
  });

  it('comes back from the form as it went in', () => {
    const drafts = [
      { ...freshSample('A7'), person: 'invented', neighbourhood: 'Mill Lane', size: '4 x 8 ft', plants: ['Tomato'] },
      { ...freshSample('A8'), kind: 'lawn' as const, size: '40 m2', depth: '8 cm' },
      { ...freshSample('A9'), kind: 'pots' as const, count: '3', volume: '20 L' },
    ];
    for (const draft of drafts) expect(draftOf(contentOf(draft))).toEqual(draft);
  });

  it('keeps what the form does not ask for', () => {
    const before = { ...contentOf(freshSample('A1')), nearOpenWater: 'yes' as const };
    expect(contentOf({ ...draftOf(before), person: 'x' }, before)).toMatchObject({ nearOpenWater: 'yes' });
  });
});

describe('isCode', () => {
  it('is 1 to 12 letters, digits or hyphens', () => {
    expect(['A1', 'a-017', '3'].every(isCode)).toBe(true);
    expect(['', 'A 1', 'ABCDEFGHIJKLM', 'ä1'].some(isCode)).toBe(false);
  });
});

import { answer, type Proposal, propose } from '@sorrel/intake';
import { describe, expect, it } from 'vitest';
import { add, beginGarden } from '../../data/write.ts';
import { dayOf } from './day-model.ts';
import { labEntries, labRows } from './lab-rows.ts';

const garden = beginGarden({ garden: 'x', soilDay: { date: '2026-05-02' } });
const bags = ['A001', 'A002', 'A003'].map((code) => add(garden.id, 'place', { name: code, sample: { code } }));
const started = [garden, ...bags];
const dayWith = (more: readonly (typeof started)[number][] = []) =>
  dayOf([...started, ...more].map((entry, index) => ({ number: index + 1, entry })));
const defaults = { today: '2026-05-20' };
const file = [
  'Sample,Date,pH (CaCl2),OM %',
  'A001,2026-05-10,5.4,4.2',
  'a002,2026-05-10,54,3.9',
  'A002,2026-05-10,6.1,3.9',
  'A001,2026-05-10,5.5,4.1',
  'Z999,2026-05-10,6.6,2.0',
].join('\n');

async function settled(text: string): Promise<readonly [Uint8Array, Proposal]> {
  const bytes = new TextEncoder().encode(text);
  const proposed = await propose(bytes, 'x.csv');
  if (!proposed.ok) throw new Error('no table');
  let { proposal } = proposed;
  for (const { id, choices } of proposal.questions) {
    const answered = answer(proposal, id, choices[0]?.value ?? '');
    if (answered.ok) proposal = answered.proposal;
  }
  return [bytes, proposal];
}

describe('labRows', () => {
  it('gives every row one fate, by its line', async () => {
    const rows = await labRows(...(await settled(file)), dayWith().samples, defaults);
    expect(rows.map(({ line, code, fate }) => [line, code, fate])).toEqual([
      [2, 'A001', 'adds'],
      [3, 'a002', 'mend'],
      [4, 'A002', 'adds'],
      [5, 'A001', 'mend'],
      [6, 'Z999', 'unknown'],
    ]);
    const [first, second] = rows;
    expect(first?.fate === 'adds' && first.test).toMatchObject({
      date: '2026-05-10',
      by: 'laboratory',
      ph: { value: 5.4, in: 'cacl2-0.01M' },
      organicMatter: '4.2 %',
    });
    expect(second?.cells).toEqual(['a002', '2026-05-10', '54', '3.9']);
  });

  it('knows again what is in already, so that a mended list can hold all of it', async () => {
    const read = await settled(file);
    const taken = labEntries(garden.id, await labRows(...read, dayWith().samples, defaults), true);
    expect(taken.length).toBe(4);
    const after = dayWith(taken as never[]);
    expect(after.samples.map(({ code, ph }) => [code, ph])).toEqual([
      ['A001', 5.4],
      ['A002', 6.1],
      ['A003', undefined],
      ['Z999', 6.6],
    ]);
    const again = await labRows(...read, after.samples, defaults);
    expect(again.map(({ fate }) => fate)).toEqual(['there', 'mend', 'there', 'mend', 'there']);
  });

  it('takes a row without a buffer pH from a file that has one for the others', async () => {
    const text = 'Sample,pH (CaCl2),SMP buffer pH\nA001,5.4,6.3\nA002,6.6,\n';
    const rows = await labRows(...(await settled(text)), dayWith().samples, defaults);
    expect(rows.map(({ fate }) => fate)).toEqual(['adds', 'adds']);
    const tests = rows.map((row) => (row.fate === 'adds' ? row.test.buffer : 'none'));
    expect(tests).toEqual([{ value: 6.3, kind: 'smp' }, undefined]);
  });
});

import { describe, expect, it } from 'vitest';
import { bytesOf, readAll } from '../testing/read-all.ts';
import {
  answer,
  changeColumn,
  mendHeader,
  mendLine,
  type Proposal,
  propose,
  readRows,
  senderMapping,
} from './index.ts';

const first =
  'Sample ID;Date;pH;Buffer pH;CEC;Lime (t/ha)\nA;03/04/2026;5,4;6,3;12,1;2\nB;05/06/2026;5,9;6,5;1O,2;1\nC;05/06/2026;45;6,5;10,2;1\n';
const second = 'Sample ID;Date;pH;Buffer pH;CEC;Lime (t/ha);Zn ppm\nD;01/02/2026;6,4;6,9;11,9;0;1,1\n';
const answers = {
  'ph-method': 'water-1:1',
  buffer: 'smp',
  'unit: CEC': 'meq/100 g',
  dates: 'day-month-year',
  lime: 'leave-out',
};

async function proposed(text: string): Promise<Proposal> {
  const found = await propose(bytesOf(text), 'x.csv');
  if (!found.ok) throw new Error('no table');
  return found.proposal;
}

describe('a sender', () => {
  it('is asked once: his next file needs no answers, and a new column is shown', async () => {
    const { settled } = await readAll(bytesOf(first), 'march.csv', answers);
    const kept = senderMapping.parse(JSON.parse(JSON.stringify({ ...settled.mapping, sender: 'Invented laboratory' })));
    const { proposal, outcomes } = await readAll(bytesOf(second), 'june.csv', {}, [kept]);
    expect(proposal.questions).toEqual([]);
    expect(proposal.remembered).toEqual({ sender: 'Invented laboratory', gone: [] });
    expect(proposal.columns.find(({ title }) => title === 'Zn ppm')?.means).toBe('zinc');
    const [row] = outcomes;
    expect(row?.state === 'ready' && row.place.tests[0]).toMatchObject({
      date: '2026-02-01',
      buffer: { method: 'smp' },
    });
  });

  it('who writes days in another order than he did is asked again', async () => {
    const { settled } = await readAll(bytesOf(first), 'march.csv', answers);
    const other = await propose(bytesOf(second.replace('01/02/2026', '02/25/2026')), 'x.csv', {
      senders: [settled.mapping],
    });
    expect(other.ok && other.proposal.mapping.dates).toBe('month-day-year');
  });

  it('of another table is not taken for this one', async () => {
    const { settled } = await readAll(bytesOf(first), 'march.csv', answers);
    const other = await propose(bytesOf('Name,pH,Note\nA,5.4,x\n'), 'x.csv', { senders: [settled.mapping] });
    expect(other.ok && other.proposal.remembered).toBeUndefined();
  });
});

describe('rows to mend', () => {
  it('go out, are mended, and come back with the lines they had', async () => {
    const { settled, outcomes } = await readAll(bytesOf(first), 'march.csv', answers);
    const bad = outcomes.flatMap((each) => (each.state === 'attention' ? [each] : []));
    expect(bad.map(({ line }) => line)).toEqual([3, 4]);
    const list = mendHeader(settled.header.titles) + bad.map(mendLine).join('');
    const mended = list.replace('"6,5","1O,2"', '"6,5","10,2"').replace(',45,', ',"4,5",');
    const back = await readAll(bytesOf(mended), 'mended.csv', {}, [settled.mapping]);
    expect(back.proposal.questions).toEqual([]);
    expect(back.outcomes.map(({ state, line }) => [state, line])).toEqual([
      ['ready', 3],
      ['ready', 4],
    ]);
  });
});

describe('answers', () => {
  it('that answer nothing are refused with what would', async () => {
    const proposal = await proposed(first);
    const refused = answer(proposal, 'buffer', 'vinegar');
    expect(refused.ok).toBe(false);
    if (!refused.ok) expect(refused.problems[0]?.fix).toContain('sikora');
    expect(() => answer(proposal, 'nobody asked', 'x')).toThrow(RangeError);
  });
  it('are needed before rows are read', async () => {
    const proposal = await proposed(first);
    await expect(readRows(bytesOf(first), proposal, { today: '2026-11-01' }).next()).rejects.toThrow(RangeError);
  });
  it('can be given before they are asked: a column is changed', async () => {
    const changed = changeColumn(await proposed(first), 'CEC', { means: 'not-used' });
    expect(changed.ok && changed.proposal.questions.map(({ id }) => id)).not.toContain('unit: CEC');
    expect(changeColumn(await proposed(first), 'CEC', { means: 'nonsense' }).ok).toBe(false);
  });
});

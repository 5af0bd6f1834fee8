import { propose } from '@sorrel/intake';
import { describe, expect, it } from 'vitest';
import { codeColumn, withCodes } from './code-column.ts';

async function proposed(text: string) {
  const found = await propose(new TextEncoder().encode(text), 'x.csv');
  if (!found.ok) throw new Error('no table');
  return found.proposal;
}

describe('withCodes', () => {
  it('finds the codes under a title nobody knows', async () => {
    const proposal = await proposed('Bag,pH (CaCl2)\nA001,5.4\nA002,6.1\n');
    expect(codeColumn(proposal)).toBeUndefined();
    expect(codeColumn(withCodes(proposal, ['A001', 'a002']))).toBe('Bag');
  });

  it('prefers them to a number of the laboratory’s own', async () => {
    const proposal = await proposed('Sample ID,Their name,pH (CaCl2)\n77812,A001,5.4\n77813,A002,6.1\n');
    expect(codeColumn(withCodes(proposal, ['A001', 'A002']))).toBe('Their name');
  });

  it('leaves a file alone in which no code of the day stands', async () => {
    const proposal = await proposed('Sample ID,pH (CaCl2)\nQ1,5.4\nQ2,6.1\n');
    expect(withCodes(proposal, ['A001'])).toBe(proposal);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { propose } from '../src/index.ts';
import { account } from './account.ts';
import { chance, encoded, seeds } from './mutate.ts';

describe('tables with anything wrong in them', () => {
  it('account for each row exactly once, planned or to be mended', async () => {
    await fc.assert(
      fc.asyncProperty(seeds, async (seed) => {
        const { rows, planned, attention } = await account(seed, 40);
        expect(planned + attention).toBe(rows);
      }),
      { numRuns: 40 },
    );
  });

  it('that are no tables at all are answered, not crashed upon', async () => {
    await fc.assert(
      fc.asyncProperty(fc.uint8Array({ maxLength: 400 }), async (bytes) => {
        const proposed = await propose(bytes, 'bytes');
        if (!proposed.ok) expect(proposed.problems.length).toBeGreaterThan(0);
      }),
      { numRuns: 300 },
    );
  });

  it('are written in the encodings they claim', () => {
    expect([...encoded('aé', 'utf-16be')]).toEqual([0xfe, 0xff, 0, 0x61, 0, 0xe9]);
    expect(chance(1)()).not.toBe(chance(2)());
  });
});

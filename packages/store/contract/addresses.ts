import { tmpdir } from 'node:os';
import { describe, expect, it } from 'vitest';
import { openStore } from '../src/index.ts';
import { codes, value } from './kit.ts';
import type { Bench } from './stores.ts';

/** What only a database with an address can do wrong. */
export function addressContract(bench: Bench): void {
  describe('a database server', () => {
    it('that lets nobody in, or has no such database, is told from one that is not there', async () => {
      const address = new URL(await bench.place());
      const other = (change: Partial<URL>) => Object.assign(new URL(address), change).href;
      for (const wrong of [
        other({ password: 'sesame' }),
        other({ username: 'bert' }),
        other({ pathname: '/nowhere' }),
      ]) {
        const result = await openStore(wrong);
        expect(codes(result)).toEqual(['store.refused']);
        expect(JSON.stringify(result)).not.toContain('sesame');
      }
    });

    it('makes its own backups', async () => {
      const store = await bench.open();
      expect(codes(await store.backup({ folder: tmpdir(), keep: 1 }, '2026-03-01'))).toEqual(['store.not-a-file']);
      expect(store.where).not.toContain('sorrel:');
      expect(value(await store.check()).problems).toEqual([]);
    });
  });
}

import fc from 'fast-check';
import { expect, it } from 'vitest';
import { rowBytes } from './row-bytes.ts';

it('holds what was added, whatever it was given to begin with, and starts again', () => {
  fc.assert(
    fc.property(
      fc.array(fc.string({ unit: 'grapheme', maxLength: 40 })),
      fc.integer({ min: 1, max: 64 }),
      (texts, size) => {
        const rows = rowBytes(size);
        for (let round = 0; round < 2; round++) {
          for (const text of texts) rows.add(text);
          expect(new TextDecoder().decode(rows.take())).toBe(texts.join(''));
        }
      },
    ),
  );
});

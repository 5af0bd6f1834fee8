import fc from 'fast-check';
import { expect, it } from 'vitest';
import { figureText } from './figure-text.ts';

it('writes every number as String does', () => {
  const few = fc.integer({ min: -(10 ** 7), max: 10 ** 7 }).map((thousandths) => thousandths / 1000);
  fc.assert(
    fc.property(fc.oneof(few, fc.double(), fc.integer()), (value) => {
      expect(figureText(value)).toBe(String(value));
    }),
    { numRuns: 2000 },
  );
  expect([0, 6.43, 0.05, 100.2, 1e21, Number.NaN].map(figureText)).toEqual([
    '0',
    '6.43',
    '0.05',
    '100.2',
    '1e+21',
    'NaN',
  ]);
});

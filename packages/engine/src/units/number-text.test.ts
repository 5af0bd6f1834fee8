import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plainText, readNumber } from './number-text.ts';

const value = (text: string) => {
  const reading = readNumber(plainText(text));
  return reading.state === 'number' ? reading.value : reading.state;
};

// How people write numbers: common practice, no source.
describe('numbers as gardeners write them', () => {
  it.each([
    ['2.5', 2.5],
    ['2,5', 2.5],
    ['.5', 0.5],
    [',5', 0.5],
    ['1/2', 0.5],
    ['1 1/2', 1.5],
    ['1-1/2', 1.5],
    ['½', 0.5],
    ['1½', 1.5],
    ['1 ⅛', 1.125],
    ['1⁄2', 0.5],
    ['1 200', 1200],
    ['1 200 000', 1_200_000],
    ['1,200.5', 1200.5],
    ['1.200,5', 1200.5],
    ['1,200,000', 1_200_000],
    ['1.200.000', 1_200_000],
    ['0,125', 0.125],
    ['1.200', 1.2],
    ['12,34', 12.34],
    ['1234,567', 1234.567],
    ['1e3', 1000],
    ['1.5E-3', 0.0015],
    ['−3', -3],
    ['+4', 4],
    ['5.', 5],
  ])('%s', (text, expected) => expect(value(text)).toBeCloseTo(expected, 12));

  it.each(['1,200', '12,345', '-1,200'])('refuses %s, which two readers read differently', (text) =>
    expect(value(text)).toBe('ambiguous'),
  );

  it.each(['', 'abc', '.', ',', '1,2,3', '1.2.3', '1/0', '1.20,00,5'])('finds no number in “%s”', (text) =>
    expect(value(text)).toBe('none'),
  );

  it('reads back any decimal, with a point or with a comma', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1e9, noNaN: true }), (number) => {
        const text = String(number);
        expect(value(text)).toBe(number);
        const comma = value(text.replace('.', ','));
        if (comma !== 'ambiguous') expect(comma).toBe(number);
      }),
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canUnicode, cut, hanging, paragraph, textWidth, wrap } from './layout.ts';
import { tableText } from './table-text.ts';

const text = fc.string({ unit: fc.constantFrom('a', 'b', ' ', 'é', '²', '茶'), maxLength: 120 });

describe('layout', () => {
  it('wraps without losing a word', () => {
    fc.assert(
      fc.property(text, fc.integer({ min: 5, max: 60 }), (given, width) => {
        const lines = wrap(given, width);
        expect(lines.join(' ').match(/\S+/g)).toEqual(given.match(/\S+/g));
        for (const line of lines) if (line.includes(' ')) expect(textWidth(line)).toBeLessThanOrEqual(width);
      }),
    );
  });
  it('sets further lines in under the label', () => {
    expect(hanging('- ', 'one two three', 2, 11)).toBe('  - one two\n    three');
    expect(paragraph('one two three', 2, 2, 12)).toBe('  one two\n    three');
  });
  it('cuts to cells, not to letters', () => {
    expect(cut('abcdef', 4, '~')).toBe('abc~');
    expect(textWidth(cut('茶茶茶', 5, '~'))).toBeLessThanOrEqual(5);
  });
  it('knows which locales show more than ASCII', () => {
    expect(canUnicode(true, { LANG: 'en_US.UTF-8' })).toBe(false);
    expect(canUnicode(undefined, { LANG: 'en_US.UTF-8' })).toBe(true);
    expect(canUnicode(undefined, { LC_ALL: 'C', LANG: 'en_US.UTF-8' })).toBe(false);
  });
  it('keeps a table inside the page by wrapping its flexible columns', () => {
    const long = 'word '.repeat(40).trim();
    const table = tableText(
      [{ title: 'A', flexible: true }, { title: 'B', flexible: true }, { title: 'C' }],
      [[long, long, 'x']],
      { width: 60 },
    );
    for (const line of table.split('\n')) expect(line.length).toBeLessThanOrEqual(60);
    expect(table.match(/word/g)).toHaveLength(80);
  });
});

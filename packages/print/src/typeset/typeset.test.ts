import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demoPlace } from '../../testing/demo-gardens.ts';
import { readPdf } from '../../testing/read-pdf.ts';
import { handout, labels } from '../index.ts';
import { safeText } from './safe-text.ts';
import { typeset } from './typeset.ts';

const bed = demoPlace('Long vegetable bed');
const options = { system: 'us', printed: '2026-10-20' } as const;
const squeezed = (text: string): string => text.replace(/[\s\u200b]+/g, '');

/** Everything the typesetter's language gives a meaning to. */
const markup = [
  '#panic("no")',
  '#read("data.json")',
  '#include "data.json"',
  '#eval("1+1")',
  '*bold* _slanted_ `raw` $x^2$',
  '= Heading',
  '- list + list / term: x',
  '<label> @reference',
  '// comment /* comment */',
  '\\ \\# \\u{1F600} ~ -- ---',
  '"); #panic()',
  'https://example.org/#x',
  '{{name}} {name}',
  '</svg><script>alert(1)</script>',
];

describe('names of people on paper', () => {
  it('are never read as markup: they stand on the page letter by letter', async () => {
    const places = markup.map((name) => ({ ...bed.place, name }));
    const { pages } = await readPdf(labels(places, { ...options, url: () => 'https://garden.example' }));
    const text = squeezed(pages.map((page) => page.text).join(' '));
    for (const name of markup) expect(text).toContain(squeezed(name));
  });

  it('keep accents and other scripts', async () => {
    const names = ['Bärlauch & Möhre', 'Ñandú çà œuf', 'Ελιά', 'Свёкла', 'Łąka żółta', 'Ağaç ığdır'];
    const places = names.map((name) => ({ ...bed.place, name }));
    const { pages } = await readPdf(labels(places, { ...options, url: () => 'https://garden.example' }));
    for (const name of names) expect(squeezed(pages[0]?.text ?? '')).toContain(squeezed(name));
  });

  it('wrap, however long, and stay on the paper', async () => {
    for (const name of ['Beet '.repeat(40), 'Donaudampfschifffahrtsgesellschaftskapitän'.repeat(4)]) {
      const { pages } = await readPdf(handout({ ...bed.place, name }, bed.recommendation, options));
      expect(squeezed(pages[0]?.text ?? '')).toContain(squeezed(name));
      expect(pages.length).toBeLessThanOrEqual(3);
      const longest = Math.max(...(pages[0]?.pieces ?? []).map((piece) => piece.text.length));
      expect(longest).toBeLessThan(150);
    }
  });

  it('of any letters whatever can be set', () => {
    const text = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 40 }),
      fc.string({ unit: 'grapheme', maxLength: 80 }),
      fc
        .array(fc.constantFrom(...markup, '#', '"', '\\', '\ud800', '\u202e', '\u0000', '\r\n'), { maxLength: 6 })
        .map((parts) => parts.join('')),
    );
    fc.assert(
      fc.property(text, (name) => {
        const sheet = labels([{ ...bed.place, name }], { ...options, url: () => 'https://garden.example' });
        expect(Buffer.from(sheet.subarray(0, 5)).toString()).toBe('%PDF-');
      }),
      { numRuns: 40 },
    );
  });

  it('lose only what has no place on paper', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme-composite', maxLength: 100 }), (text) => {
        expect(safeText(text).replaceAll('\u200b', '').normalize()).toBe(
          text
            .replace(/[\p{Cc}\u2028\u2029]+/gu, ' ')
            .replaceAll('\u200b', '')
            .normalize(),
        );
        expect(safeText(safeText(text))).toBe(safeText(text));
      }),
    );
    expect(safeText('a\u0000b\r\nc\u202ed\ud800')).toBe('a b cd\ufffd');
  });
});

describe('a design with a mistake', () => {
  it('is said to be one', () => {
    expect(() => typeset({ name: 'The broken page', source: '#let x = (' }, {})).toThrow(
      'The broken page cannot be set',
    );
  });

  it('leaves the typesetter fit for the next page', () => {
    expect(() => typeset({ name: 'The broken page', source: '#nothing' }, {})).toThrow(RangeError);
    expect(typeset({ name: 'A page', source: '#json("data.json").a' }, { a: 'fine' }).length).toBeGreaterThan(500);
  });
});

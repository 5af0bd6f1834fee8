import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parse, stringify } from 'yaml';
import { parseYaml } from './yaml.ts';

const demo = new URL('../../../demo/', import.meta.url);

describe('parseYaml', () => {
  it.each(readdirSync(demo).filter((file) => file.endsWith('.yaml')))(
    'reads %s as the full reader does',
    async (file) => {
      const text = readFileSync(new URL(file, demo), 'utf8');
      expect(await parseYaml(text)).toEqual(parse(text));
    },
  );
  it('takes plain words and figures as the full reader does', async () => {
    const letters = fc.constantFrom(...'0123456789.eExob+-_~yesnoNullTRUE:,"\'# /%'.split(''));
    const word = fc.oneof(
      fc.string({ unit: letters, maxLength: 8 }),
      fc.constantFrom(
        'yes',
        'no',
        'on',
        'null',
        'Null',
        '~',
        'true',
        'True',
        'FALSE',
        '08',
        '0o17',
        '0x1F',
        '.5',
        '5.',
        '1e3',
        '-.inf',
        '.NaN',
        '2026-10-03',
        '12:30',
        '1_000',
        '0b11',
        '+7',
        '4 x 8 ft',
      ),
    );
    await fc.assert(
      fc.asyncProperty(word, async (written) => {
        const text = `a: ${written}\nb: [${written}]\n${written}: c\n`;
        let full: unknown;
        try {
          full = parse(text);
        } catch {
          await expect(parseYaml(text)).rejects.toThrow();
          return;
        }
        expect(await parseYaml(text)).toEqual(full);
      }),
      { numRuns: 3000 },
    );
  });
  it('reads whatever is written out', async () => {
    await fc.assert(
      fc.asyncProperty(fc.jsonValue({ maxDepth: 3 }), async (value) => {
        const text = stringify(value);
        expect(await parseYaml(text)).toEqual(parse(text) ?? undefined);
      }),
    );
  });
  it.each([
    ['garden: x\nplaces:\n  - name: a\n   size: 4 ft\n', 4],
    ['garden: x\nplaces: [a, b\n', 3],
    ['garden: x\ngarden: y\n', 2],
    ['a: "open\n', 2],
  ])('names the line of the fault in %j', async (text, line) => {
    await expect(parseYaml(text)).rejects.toThrow(new RegExp(`line ${line}\\b`));
  });
  it('does not let aliases multiply', async () => {
    const text = `a: &a [x]\nb: &b [${'*a,'.repeat(60)}]\nc: &c [${'*b,'.repeat(60)}]\nd: [${'*c,'.repeat(60)}]`;
    await expect(parseYaml(text)).rejects.toThrow(/alias/i);
  });
});

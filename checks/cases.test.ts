import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { basisClass } from './basis.ts';
import { readCases } from './cases.ts';

const header = 'id,case,inputs_json,expected_json,tolerance,source,basis,note';
const good = 'a1,title,"{""x"": 1}","{""y"": 2}",0.1,KEY,read,';

describe('reading a file of cases', () => {
  it('keeps the good rows and reports each bad one with its line', () => {
    const { cases, bad } = readCases(
      [
        header,
        good,
        'a2,broken,"{""x"": 1","{""y"": 2}",0.1,KEY,read,',
        'a3,scalar,"{""x"": 1}",5,0.1,KEY,read,',
        'a1,twice,"{""x"": 1}","{""y"": 2}",0.1,KEY,read,',
        'a4,short',
        'a5,"two\nlines","{""x"": 1}","{""y"": NaN}",0.1,KEY,read,',
        'a6,fine,"{""x"": 1}","{""y"": 2}",0.1,KEY,read,"a ""note"", quoted"',
        ',no id,"{""x"": 1}","{}",0.1,KEY,read,',
      ].join('\r\n'),
    );
    expect(cases.map(({ id, line }) => [id, line])).toEqual([
      ['a1', 2],
      ['a6', 9],
    ]);
    expect(bad.map(({ id, line }) => [id, line])).toEqual([
      ['a2', 3],
      ['a3', 4],
      ['a1', 5],
      ['a4', 6],
      ['a5', 7],
      ['', 10],
    ]);
    expect(bad[0]?.fault).toContain('inputs_json is not JSON');
    expect(bad[1]?.fault).toContain('expected_json is not an object');
    expect(bad[2]?.fault).toContain('already stands on line 2');
  });

  it('takes columns in any order, a byte order mark and missing optional columns', () => {
    const { cases } = readCases('\uFEFFexpected_json,id,inputs_json\n"{""y"": 2}",a,"{""x"": 1}"\n');
    expect(cases).toMatchObject([{ id: 'a', expected: { y: 2 }, inputs: { x: 1 }, tolerance: '', basis: '' }]);
  });

  it('refuses a text that is not such a file', () => {
    expect(() => readCases('name,price\nlime,3\n')).toThrow('no column id, inputs_json, expected_json');
    expect(() => readCases('')).toThrow('no column');
  });

  it('survives any rows after a good header', () => {
    const cell = fc.oneof(
      fc.string(),
      fc.constantFrom('"', '""', ',', '\n', '\r', '{', '{"a":', '"{""a"":1}"', '\u0000'),
    );
    fc.assert(
      fc.property(fc.array(fc.array(cell, { maxLength: 9 }), { maxLength: 6 }), (rows) => {
        const { cases } = readCases(`${header}\n${good}\n${rows.map((row) => row.join(',')).join('\n')}`);
        expect(cases[0]?.id).toBe('a1');
      }),
    );
  });
});

describe('the basis of a case', () => {
  it.each([
    ['read', '', 'read'],
    ['read', 'page prints 0.76; exact 0.75', 'read'],
    ['read', 'published formula, arithmetic ours', 'derived'],
    ['read', 'formula read, example ours', 'derived'],
    ['read', '36 chosen by us', 'derived'],
    ['read', 'computed from the rule as read', 'derived'],
    ['read', 'page prints 2.23: misprint', 'derived'],
    ['read', 'formula from memory', 'memory'],
    ['rule read, instance derived', '', 'derived'],
    ['derived from formula, formula read', '', 'derived'],
    ['derived from formula, formula memory', '', 'memory'],
    ['0.50 read; formula memory', '', 'memory'],
    ['memory', '', 'memory'],
    ['', '', 'derived'],
  ])('%j with note %j is %s', (basis, note, kind) => {
    expect(basisClass({ basis, note })).toBe(kind);
  });
});

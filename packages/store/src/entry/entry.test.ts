import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { writer } from '../../contract/kit.ts';
import { canonical, checkEntry, newId } from './index.ts';

describe('ids', () => {
  it('are UUIDs of version 7, with the time in front', () => {
    // RFC 9562, appendix A.6: the example of a UUIDv7 and its Unix time 0x017F22E279B0.
    const random = Uint8Array.from([0, 0, 0, 0, 0, 0, 0x0c, 0xc3, 0x18, 0xc4, 0xdc, 0x0c, 0x0c, 0x07, 0x39, 0x8f]);
    expect(newId(0x017f22e279b0, random)).toMatch(/^017f22e2-79b0-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
    expect(newId(1) < newId(2)).toBe(true);
    expect(newId(1)).not.toBe(newId(1));
  });
});

describe('canonical', () => {
  it('is one text for one value, whatever the order of the fields', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        const text = canonical(value);
        expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify(value)));
        expect(canonical(turned(JSON.parse(text)))).toBe(text);
      }),
    );
  });
});

describe('checkEntry', () => {
  it('answers anything at all with an entry or with problems', () => {
    const { addGarden, add, correct, id } = writer(90);
    const good = [addGarden(), add('place', { name: 'Bed' }), correct(id(), 'material', { material: 'wood ash' })];
    fc.assert(
      fc.property(fc.constantFrom(...good), fc.string(), fc.jsonValue(), (entry, key, value) => {
        for (const typed of [
          value,
          { ...entry, [key]: value },
          { ...entry, content: value },
          { ...entry, kind: value },
        ]) {
          const checked = checkEntry(typed);
          if (checked.ok) expect(canonical(checked.value)).toBe(canonical(typed));
          else expect(checked.problems.length).toBeGreaterThan(0);
        }
      }),
    );
  });

  it('leaves quantities, spaces and the order of fields as they were typed', () => {
    const { add, id } = writer(91);
    const content = {
      date: '2026-02-01',
      by: 'laboratory',
      calcium: ' 1,640 lb/acre ',
      ph: { value: 5.2 },
      note: ' x ',
    };
    const checked = checkEntry(add('test', content, id()));
    expect(checked.ok && JSON.stringify((checked.value as { content: unknown }).content)).toBe(JSON.stringify(content));
  });
});

function turned(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(turned);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([key, each]) => [key, turned(each)]),
  );
}

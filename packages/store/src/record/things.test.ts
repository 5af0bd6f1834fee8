import fc from 'fast-check';
import { describe, expect, expectTypeOf, it } from 'vitest';
import { makeIds, writer } from '../../contract/kit.ts';
import type { Entry } from '../entry/index.ts';
import { emptyRecord, thingsOfKind, withEntries } from './record.ts';
import type { Numbered, Thing } from './things.ts';
import { takenBack } from './things.ts';

const numbered = (entries: readonly Entry[]): Numbered[] =>
  entries.map((entry, index) => ({ number: index + 1, entry }));

describe('things', () => {
  it('are typed by their kind', () => {
    const things: readonly Thing[] = [];
    for (const thing of things) if (thing.kind === 'test') expectTypeOf(thing.content.by).toBeString();
    expectTypeOf(thingsOfKind(things, 'place')[0]?.content.name).toEqualTypeOf<string | undefined>();
  });

  it('are after an undo what they were before the entry it takes back', () => {
    const step = fc.record({
      what: fc.constantFrom('add', 'correct', 'remove', 'undo', 'undo'),
      which: fc.nat(20),
    });
    fc.assert(
      fc.property(fc.array(step, { maxLength: 40 }), (steps) => {
        const write = writer(80);
        const entries: Entry[] = [write.addGarden()];
        // The witness: the plain list of beds, copied before each change, so that undo is a step back.
        let beds: { id: string; name: string }[] = [];
        const before: { entry: string; beds: typeof beds }[] = [];
        for (const [index, { what, which }] of steps.entries()) {
          if (what === 'undo') {
            const back = before.pop();
            if (back === undefined) continue;
            entries.push(write.undoOf(back.entry));
            beds = back.beds;
            continue;
          }
          const target = beds[which % Math.max(1, beds.length)];
          const name = `Bed ${index}`;
          const entry =
            what === 'add' || target === undefined
              ? write.add('place', { name })
              : what === 'correct'
                ? write.correct(target.id, 'place', { name })
                : write.remove(target.id);
          before.push({ entry: entry.id, beds });
          if (entry.action === 'add') beds = [...beds, { id: entry.id, name }];
          else if (entry.action === 'correct') beds = beds.map((bed) => (bed === target ? { ...bed, name } : bed));
          else beds = beds.filter((bed) => bed !== target);
          entries.push(entry);
        }
        const record = withEntries(emptyRecord(write.garden), numbered(entries));
        const found = thingsOfKind(record.standing(), 'place').map(({ id, content }) => ({ id, name: content.name }));
        expect(found).toEqual(beds);
      }),
    );
  });

  it('count an undo that was taken back for nothing, however long the chain', () => {
    const write = writer(81);
    const entries: Entry[] = [write.addGarden()];
    for (let length = 1; length <= 6; length++) {
      entries.push(write.undoOf(entries.at(-1)?.id ?? ''));
      expect(takenBack(numbered(entries)).has(write.garden)).toBe(length % 2 === 1);
    }
  });

  it('are the same whether entries come at once or one by one, and never twice', () => {
    const write = writer(82);
    const entries = numbered([
      write.addGarden(),
      write.add('place', { name: 'Bed 1' }),
      write.add('place', { name: 'Bed 2' }),
    ]);
    const atOnce = withEntries(emptyRecord(write.garden), entries);
    let slowly = emptyRecord(write.garden);
    for (const each of entries) slowly = withEntries(withEntries(slowly, [each]), entries.slice(0, each.number));
    expect(slowly.standing()).toEqual(atOnce.standing());
    expect(slowly.version).toBe(3);
  });

  it('keeps an older view of a record as it was', () => {
    const write = writer(83);
    const first = withEntries(emptyRecord(write.garden), numbered([write.addGarden()]));
    withEntries(first, [{ number: 2, entry: write.add('place', { name: 'Bed 1' }) }]);
    expect(first.standing()).toHaveLength(1);
    expect(makeIds(1)()).toBe(makeIds(1)());
  });
});

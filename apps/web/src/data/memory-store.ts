import { assembleRecord, emptyRecord, entriesFromDocument, type GardenRecord, withEntries } from '@sorrel/store/record';
import { type Entry, type GardenStore, NotFound, Refused } from './garden-store.ts';
import { newId } from './new-id.ts';
import { takeBack } from './write.ts';

/**
 * Gardens kept in the page and forgotten with it: for tests, and for trying the screens without a server.
 *
 * @param demos garden documents to begin with, each said to be invented
 */
export function memoryStore(demos: readonly unknown[] = []): GardenStore {
  const records = new Map<string, GardenRecord>();
  const append = (garden: string, entries: readonly Entry[]) => {
    const before = records.get(garden) ?? emptyRecord(garden);
    const fresh = entries.filter((entry) => !before.byId.has(entry.id));
    records.set(
      garden,
      withEntries(
        before,
        fresh.map((entry, index) => ({ number: before.version + index + 1, entry })),
      ),
    );
  };
  const demo = new Set<string>();
  for (const document of demos) {
    const made = entriesFromDocument(document, { by: 'Sorrel', at: new Date().toISOString(), newId: () => newId() });
    if (!made.ok) throw new Refused(made.problems.map((problem) => problem.message).join(' '));
    const id = made.value[0]?.garden ?? '';
    append(id, made.value);
    demo.add(id);
  }
  const assembled = (garden: string) => assembleRecord(records.get(garden) ?? emptyRecord(garden));
  return {
    async list() {
      return [...records.keys()].flatMap((id) => {
        const garden = assembled(id);
        return garden === undefined
          ? []
          : [{ id, name: garden.document.garden, demo: demo.has(id), places: garden.document.places.length }];
      });
    },
    async document(garden) {
      const found = assembled(garden);
      if (found === undefined) throw new NotFound(garden);
      return { id: garden, ...found };
    },
    entries: async (garden) => records.get(garden)?.entries.slice() ?? [],
    append: async (garden, entries) => append(garden, entries),
    undo: async (garden, entry) => append(garden, [takeBack(garden, entry)]),
  };
}

import type { GardenDocument } from '@sorrel/engine/document';
import { assemble } from './assemble.ts';
import { type Entry, type GardenStore, NotFound } from './garden-store.ts';
import { add, beginGarden, takeBack } from './write.ts';

/**
 * Gardens kept in the page and forgotten with it: for tests, and for trying the screens without a server.
 *
 * @param demos garden documents to begin with, each said to be invented
 */
export function memoryStore(demos: readonly GardenDocument[] = []): GardenStore {
  const written = new Map<string, Entry[]>();
  const demo = new Set<string>();
  for (const document of demos) {
    const entries = entriesOf(document);
    const id = entries[0]?.id ?? '';
    written.set(id, entries);
    demo.add(id);
  }
  return {
    async list() {
      return [...written].flatMap(([id, entries]) => {
        const record = assemble(id, entries);
        return record === undefined
          ? []
          : [{ id, name: record.document.garden, demo: demo.has(id), places: record.placeIds.length }];
      });
    },
    async document(garden) {
      const record = assemble(garden, written.get(garden) ?? []);
      if (record === undefined) throw new NotFound(garden);
      return record;
    },
    async append(garden, entries) {
      const before = written.get(garden) ?? [];
      const known = new Set(before.map((entry) => entry.id));
      written.set(garden, [...before, ...entries.filter((entry) => !known.has(entry.id))]);
    },
    async undo(garden, entry) {
      written.set(garden, [...(written.get(garden) ?? []), takeBack(garden, entry)]);
    },
  };
}

/** The entries that would have led to a garden document. */
export function entriesOf({ places, materials = [], ...head }: GardenDocument): Entry[] {
  const garden = beginGarden(head);
  const entries: Entry[] = [garden];
  for (const { tests = [], applications = [], ...content } of places) {
    const place = add(garden.id, 'place', content);
    entries.push(
      place,
      ...tests.map((test) => add(garden.id, 'test', test, place.id)),
      ...applications.map((application) => add(garden.id, 'application', application, place.id)),
    );
  }
  return [...entries, ...materials.map((material) => add(garden.id, 'material', material))];
}

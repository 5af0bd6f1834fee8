import { checkEntry } from '@sorrel/store/entry';
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
    entries: async (garden, since = 0) => records.get(garden)?.entries.slice(since) ?? [],
    append: async (garden, entries) => append(garden, entries),
    undo: async (garden, entry) => append(garden, [takeBack(garden, entry)]),
    async exportGarden(garden) {
      const entries = records.get(garden)?.entries.map(({ entry }) => entry) ?? [];
      // Nothing here keeps photos.
      return `${JSON.stringify({ sorrel: 'garden', version: 1, garden, entries, photos: [] }, undefined, 1)}\n`;
    },
    async importGarden(text) {
      const { garden, entries } = readExport(text);
      append(garden, entries);
      return garden;
    },
  };
}

/** Checks a file as the server would, as far as a page without photos can. */
function readExport(text: string): { readonly garden: string; readonly entries: readonly Entry[] } {
  let typed: { readonly sorrel?: unknown; readonly garden?: unknown; readonly entries?: unknown };
  try {
    typed = JSON.parse(text);
  } catch (error) {
    throw new Refused(String(error));
  }
  const { sorrel, garden, entries } = typed;
  if (sorrel !== 'garden' || typeof garden !== 'string' || !Array.isArray(entries)) throw new Refused('no garden file');
  const checked = entries.map((entry: unknown) => checkEntry(entry));
  const problems = checked.flatMap((each) => (each.ok ? [] : each.problems));
  if (problems.length > 0) throw new Refused(problems[0]?.message ?? '', problems);
  return { garden, entries: checked.flatMap((each) => (each.ok ? [each.value] : [])) };
}

import { readGarden } from '@sorrel/engine/document';
import type { Store } from '@sorrel/store';
import { exit } from '../exit.ts';
import { readDocument } from '../input.ts';
import { oneFile, read, todayOf } from '../options.ts';
import { problemsText } from '../problems-text.ts';
import { orStop, withRecord } from '../record.ts';
import { words } from '../words.ts';

const options = { store: { type: 'string' }, by: { type: 'string' }, help: { type: 'boolean', short: 'h' } } as const;

/** `sorrel import FILE --store STORE`: puts a garden document, or a record that was exported, into the record. */
export async function run(args: readonly string[]): Promise<number> {
  const { values, positionals } = read(args, options, 'import');
  const document = await readDocument(oneFile(positionals, 'import'));
  if (isRecord(document))
    return withRecord(values.store, 'import', true, async (store) => {
      const { garden, added, known } = orStop(await store.importGarden(JSON.stringify(document)));
      process.stdout.write(`${words.recordRead(garden, added, known)}\n`);
      return exit.fine;
    });
  // A record is kept for years, so a document with a wrong entry is mended first.
  const { problems } = readGarden(document, { today: todayOf(undefined, 'import') });
  if (problems.length > 0) {
    process.stderr.write(`${problemsText(problems, [])}\n${words.notImported}\n`);
    return exit.nothing;
  }
  return withRecord(values.store, 'import', true, (store) => put(store, document, values.by ?? 'me'));
}

async function put(store: Store, document: unknown, by: string): Promise<number> {
  const { entriesFromDocument, newId } = await import('@sorrel/store');
  const now = Date.now();
  const writer = { by, at: new Date(now).toISOString(), newId: () => newId(now) };
  const receipts = orStop(await store.append(orStop(entriesFromDocument(document, writer))));
  process.stdout.write(`${words.imported(receipts[0]?.garden ?? '', receipts.length)}\n`);
  return exit.fine;
}

const isRecord = (document: unknown): boolean =>
  typeof document === 'object' && document !== null && 'sorrel' in document && document.sorrel === 'garden';

import type { Result } from '@sorrel/engine/derivation';
import type { Database } from '../database/database.ts';
import { problem, Refusal } from '../problems.ts';
import type { Numbered } from '../record/things.ts';
import { guarded } from '../store/guard.ts';
import { findPhoto } from '../store/photos.ts';
import type { Records } from '../store/records.ts';
import { exportVersion } from './garden-export.ts';

/** Characters one text may hold, well under what the JavaScript engine allows (2^29 - 24). */
const most = 500_000_000;

export interface ExportOptions {
  /** False leaves the photos out; such a file can only be read into a store that has them. */
  readonly photos?: boolean;
}

/**
 * Writes a garden out as one JSON text: an entry or a photo a line, fields in the order in which they were sent. What is read back in and
 * written out again is the same to the byte.
 */
export const writeExport = (
  database: Database,
  records: Records,
  garden: string,
  options: ExportOptions = {},
): Promise<Result<string>> =>
  guarded(database, async (db) => {
    const record = await records.read(db, garden);
    if (record.version === 0) throw new Refusal(problem('store.no-garden', 'garden', garden));
    const entries = record.entries.slice(0, record.version);
    const lines = entries.map(({ entry }) => JSON.stringify(entry));
    let length = lines.reduce((sum, line) => sum + line.length + 2, 0);
    const photos: string[] = [];
    for (const hash of options.photos === false ? [] : photosOf(entries)) {
      const found = await findPhoto(db, hash);
      if (found === undefined) throw new Refusal(problem('store.no-photo', 'content.photos', hash));
      const { type, bytes } = found;
      const base64 = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length).toString('base64');
      length += base64.length + 150;
      if (length > most) throw new Refusal(problem('store.too-large', 'garden', Math.round(length / 1e6)));
      photos.push(JSON.stringify({ hash, type, base64 }));
    }
    const list = (of: readonly string[]) => (of.length === 0 ? '[]' : `[\n${of.join(',\n')}\n]`);
    const head = `"sorrel":"garden",\n"version":${exportVersion},\n"garden":${JSON.stringify(garden)}`;
    return `{\n${head},\n"entries":${list(lines)},\n"photos":${list(photos)}\n}\n`;
  });

/** Hashes of all photos a record shows or ever showed, each once, sorted. */
export function photosOf(entries: readonly Numbered[]): readonly string[] {
  const hashes = new Set<string>();
  for (const { entry } of entries)
    if ((entry.action === 'add' || entry.action === 'correct') && entry.kind === 'observation')
      for (const hash of entry.content.photos ?? []) hashes.add(hash);
  return [...hashes].sort();
}

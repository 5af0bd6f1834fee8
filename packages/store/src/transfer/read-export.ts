import { fail, ok, type Problem, type Result } from '@sorrel/engine/derivation';
import * as z from 'zod';
import type { Database } from '../database/database.ts';
import { checkEntry } from '../entry/check-entry.ts';
import type { Entry } from '../entry/entry.ts';
import { problem } from '../problems.ts';
import { appendChecked } from '../store/append.ts';
import { hashOf, insertPhoto, type Photo } from '../store/photos.ts';
import type { Records } from '../store/records.ts';
import { exportVersion, gardenExport } from './garden-export.ts';

export interface Imported {
  readonly garden: string;
  /** Entries that were new to this store. */
  readonly added: number;
  /** Entries it already had. */
  readonly known: number;
  readonly photos: number;
}

interface Parsed {
  readonly garden: string;
  readonly entries: readonly Entry[];
  readonly photos: readonly Photo[];
}

/** Reads a garden in, all of it or nothing. What the store already has is passed over; what contradicts it is refused. */
export async function readExport(database: Database, records: Records, text: string): Promise<Result<Imported>> {
  const parsed = parseExport(text);
  if (!parsed.ok) return parsed;
  const { garden, entries, photos } = parsed.value;
  const stored = await appendChecked(database, records, entries, async (tx) => {
    for (const photo of photos) await insertPhoto(tx, photo);
  });
  if (!stored.ok) return stored;
  const added = stored.value.filter((receipt) => receipt.fresh).length;
  return ok({ garden, added, known: stored.value.length - added, photos: photos.length });
}

const outline = z.looseObject({ sorrel: z.literal('garden'), version: z.number(), entries: z.array(z.unknown()) });

function parseExport(text: string): Result<Parsed> {
  let typed: unknown;
  try {
    typed = JSON.parse(text);
  } catch (error) {
    return fail(refused(error instanceof Error ? error.message : String(error)));
  }
  const shape = outline.safeParse(typed);
  if (!shape.success) return fail(refused('its first lines do not say so'));
  if (shape.data.version > exportVersion)
    return fail(problem('store.newer-export', 'version', shape.data.version, { known: exportVersion }));
  const problems: Problem[] = [];
  const entries: Entry[] = [];
  for (const [index, each] of shape.data.entries.entries()) {
    const checked = checkEntry(each);
    if (checked.ok) entries.push(checked.value);
    else problems.push(...checked.problems.map((one) => ({ ...one, field: `entries[${index}].${one.field}` })));
  }
  if (problems.length > 0) return fail(...problems);
  const file = gardenExport.safeParse(typed);
  if (!file.success) {
    const issue = file.error.issues[0];
    return fail(refused(issue === undefined ? 'unknown' : `${issue.path.join('.') || 'the file'}: ${issue.message}`));
  }
  const { garden } = file.data;
  const stray = entries.find((entry) => entry.garden !== garden);
  if (stray !== undefined) return fail(problem('store.wrong-garden', 'garden', stray.id));
  const photos = file.data.photos.map(({ hash, type, base64 }) => ({
    hash,
    type,
    bytes: Buffer.from(base64, 'base64'),
  }));
  const damaged = photos.find((photo) => photo.bytes.length === 0 || hashOf(photo.bytes) !== photo.hash);
  if (damaged !== undefined) return fail(problem('store.photo-differs', 'photos', damaged.hash));
  return ok({ garden, entries, photos });
}

const refused = (reason: string): Problem => problem('store.not-an-export', 'file', '', { reason });

import type { Kysely } from 'kysely';
import type { Tables } from '../database/tables.ts';
import type { Entry } from '../entry/entry.ts';
import { emptyRecord, type GardenRecord, withEntries } from '../record/record.ts';
import type { Numbered } from '../record/things.ts';

/** Entries kept in memory over all gardens, about 1 kB each. */
const room = 100_000;

/** Remembers records already read, and reads only what came since. What it holds is always committed. */
export interface Records {
  /** The garden's record as the database has it now; without entries when there is no such garden. */
  read(db: Kysely<Tables>, garden: string): Promise<GardenRecord>;
  /** Takes in entries that have just been committed. */
  committed(garden: string, entries: readonly Numbered[]): void;
}

export function createRecords(): Records {
  const kept = new Map<string, GardenRecord>();
  let held = 0;
  function keep(record: GardenRecord): void {
    held += record.version - (kept.get(record.garden)?.version ?? 0);
    kept.delete(record.garden);
    kept.set(record.garden, record);
    for (const [garden, old] of kept) {
      if (held <= room || garden === record.garden) break;
      kept.delete(garden);
      held -= old.version;
    }
  }
  return {
    async read(db, garden) {
      const row = await db.selectFrom('garden').select('version').where('id', '=', garden).executeTakeFirst();
      const known = kept.get(garden) ?? emptyRecord(garden);
      if (row === undefined || row.version <= known.version) return known;
      const rows = await db
        .selectFrom('entry')
        .select(['number', 'body'])
        .where('garden', '=', garden)
        .where('number', '>', known.version)
        .orderBy('number')
        .execute();
      const fresh = rows.map(({ number, body }) => ({ number, entry: JSON.parse(body) as Entry }));
      const record = withEntries(kept.get(garden) ?? known, fresh);
      keep(record);
      return record;
    },
    committed(garden, entries) {
      const known = kept.get(garden);
      if (known !== undefined) keep(withEntries(known, entries));
    },
  };
}

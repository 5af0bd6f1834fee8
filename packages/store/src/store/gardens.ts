import type { Result } from '@sorrel/engine/derivation';
import type { Database } from '../database/database.ts';
import { thingsOfKind } from '../record/record.ts';
import { guarded } from './guard.ts';
import type { Records } from './records.ts';

export interface GardenLine {
  readonly id: string;
  readonly name: string;
  readonly places: number;
  /** Number of the garden's newest entry. */
  readonly version: number;
}

/** All gardens that stand, sorted by name, then id. */
export const gardens = (database: Database, records: Records): Promise<Result<GardenLine[]>> =>
  guarded(database, async (db) => {
    const lines: GardenLine[] = [];
    for (const { id } of await db.selectFrom('garden').select('id').execute()) {
      const record = await records.read(db, id);
      const things = record.standing();
      const garden = thingsOfKind(things, 'garden')[0];
      if (garden === undefined) continue;
      const places = thingsOfKind(things, 'place').length;
      lines.push({ id, name: garden.content.garden, places, version: record.version });
    }
    return lines.sort((a, b) => a.name.localeCompare(b.name, 'en') || (a.id < b.id ? -1 : 1));
  });

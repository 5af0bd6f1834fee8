import type { Problem } from '@sorrel/engine/derivation';
import type { Kysely } from 'kysely';
import type { Tables } from './tables.ts';

export type DatabaseKind = 'sqlite' | 'postgres';

/** What the store needs of a database, the same for each kind. */
export interface Database {
  readonly kind: DatabaseKind;
  /** Where it is, fit to be shown: a file name, or an address without its password. */
  readonly where: string;
  readonly db: Kysely<Tables>;
  /** What an error of this database means for the person, or undefined when it is a fault of the program. */
  explain(error: unknown): Problem | undefined;
  /** The database's own check of its pages and indexes: what it found wrong, nothing when it is sound. */
  integrity(): Promise<readonly string[]>;
  /** Does work that only one program may do at a time, waiting for the others: making and changing the tables. */
  alone<T>(work: () => Promise<T>): Promise<T>;
  /** Number of a garden's newest entry, 0 for none, where the database can tell it without the query builder. */
  version?(garden: string): number;
  /** Copies the whole database into a new file while it stays in use. */
  copyTo?(file: string): Promise<void>;
  close(): Promise<void>;
}

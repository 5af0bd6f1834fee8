/**
 * The tables as both databases have them. `body` is the entry itself as JSON, as it was sent; the other columns only find
 * it. Entries and photos are never changed or deleted: triggers refuse it. What belongs to a soil day's run can be made again
 * from the entries.
 */
export interface Tables {
  garden: GardenTable;
  entry: EntryTable;
  photo: PhotoTable;
  day_run: DayRunTable;
  day_job: DayJobTable;
  day_result: DayResultTable;
}

/** One row a garden. Its row is locked while entries are added, so that their numbers have no gaps. */
interface GardenTable {
  id: string;
  /** Number of the garden's newest entry. */
  version: number;
}

interface EntryTable {
  garden: string;
  /** 1, 2, 3 ... in the order of arrival in this garden. */
  number: number;
  id: string;
  body: string;
}

interface PhotoTable {
  /** SHA-256 of `bytes`, in hexadecimal. */
  hash: string;
  type: string;
  size: number;
  bytes: Uint8Array;
}

/** A soil day whose samples are planned. */
interface DayRunTable {
  garden: string;
  /** What the planner wants to know, as JSON. */
  options: string;
  /** 1: nothing new is begun. */
  paused: number;
}

export type JobState = 'waiting' | 'running' | 'done' | 'failed';

/** One sample to be planned. */
interface DayJobTable {
  garden: string;
  place: string;
  code: string;
  /** Check-in order. */
  position: number;
  /** Hash of what it is planned from. */
  source: string;
  state: JobState;
  /** How often planning it has failed. */
  tries: number;
  error: string | null;
  /** Who is at it: what a worker hands in under another claim is not taken. */
  claim: string | null;
}

/** What came of it: at most one a sample. */
interface DayResultTable {
  garden: string;
  place: string;
  source: string;
  body: string;
}

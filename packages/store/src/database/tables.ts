/**
 * The tables as both databases have them. `body` is the entry itself as JSON, as it was sent; the other columns only find
 * it. Entries and photos are never changed or deleted: triggers refuse it.
 */
export interface Tables {
  garden: GardenTable;
  entry: EntryTable;
  photo: PhotoTable;
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

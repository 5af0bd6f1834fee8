import { orRefuse } from './http/store-refusals.ts';
import type { Room } from './room.ts';

/**
 * The time an entry is given: as sent; else, when it was sent before, the time it got then, so that sending it again
 * says the same; else now.
 */
export async function writtenAt(
  { store, now }: Room,
  garden: string,
  id: string | undefined,
  sent?: string,
): Promise<string> {
  if (sent !== undefined) return sent;
  const before =
    id === undefined ? undefined : orRefuse(await store.entries(garden)).find(({ entry }) => entry.id === id);
  return before?.entry.at ?? new Date(now()).toISOString();
}

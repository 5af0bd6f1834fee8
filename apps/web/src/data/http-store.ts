import { assemble } from './assemble.ts';
import { type Entry, type GardenStore, type GardenSummary, NoAnswer, NotFound, Refused } from './garden-store.ts';
import { takeBack } from './write.ts';

interface ProblemDetails {
  readonly title?: string;
  readonly detail?: string;
  readonly problems?: Refused['problems'];
}

/** Gardens kept by the server this page came from. */
export function httpStore(base = '/api'): GardenStore {
  const gardenPath = (garden: string) => `/gardens/${encodeURIComponent(garden)}`;
  const send = (garden: string, entries: readonly Entry[]) =>
    ask<unknown>(`${base}${gardenPath(garden)}/entries`, { method: 'POST', body: JSON.stringify(entries) });
  return {
    list: () => ask<readonly GardenSummary[]>(`${base}/gardens`),
    async document(garden) {
      const entries = await ask<readonly Entry[]>(`${base}${gardenPath(garden)}/entries`);
      const record = assemble(garden, entries);
      if (record === undefined) throw new NotFound(garden);
      return record;
    },
    async append(garden, entries) {
      await send(garden, entries);
    },
    async undo(garden, entry) {
      await send(garden, [takeBack(garden, entry)]);
    },
  };
}

async function ask<T>(address: string, init: RequestInit = {}): Promise<T> {
  let response: Response;
  try {
    response = await fetch(address, {
      ...init,
      headers: {
        accept: 'application/json',
        ...(init.body === undefined ? {} : { 'content-type': 'application/json' }),
      },
    });
  } catch (error) {
    throw new NoAnswer(String(error));
  }
  if (response.ok) return (response.status === 204 ? undefined : await response.json()) as T;
  if (response.status === 404) throw new NotFound(address);
  const details = (await response.json().catch(() => ({}))) as ProblemDetails;
  throw new Refused(details.detail ?? details.title ?? response.statusText, details.problems);
}

import {
  type Entry,
  type GardenRecord,
  type GardenStore,
  NoAnswer,
  NotFound,
  type Numbered,
  Refused,
} from './garden-store.ts';
import { takeBack } from './write.ts';

interface ProblemDetails {
  readonly title?: string;
  readonly detail?: string;
  readonly problems?: Refused['problems'];
}
interface Page {
  readonly entries: readonly Numbered[];
  readonly more: boolean;
}
type Line = { readonly id: string; readonly name: string; readonly places: number };

/** Gardens kept by the server this page came from. */
export function httpStore(base = '/api'): GardenStore {
  const at = (garden: string) => `${base}/gardens/${encodeURIComponent(garden)}`;
  const append = async (garden: string, entries: readonly Entry[]) => {
    await ask(`${at(garden)}/entries`, { method: 'POST', body: JSON.stringify({ entries }) });
  };
  return {
    async list() {
      const { gardens } = await ask<{ readonly gardens: readonly Line[] }>(`${base}/gardens`);
      return gardens.map(({ id, name, places }) => ({ id, name, places, demo: isSeeded(id) }));
    },
    document: (garden) => ask<GardenRecord>(at(garden)),
    async entries(garden, since = 0) {
      const all: Numbered[] = [];
      for (let more = true; more; ) {
        const page = await ask<Page>(`${at(garden)}/entries?since=${all.at(-1)?.number ?? since}`);
        all.push(...page.entries);
        more = page.more;
      }
      return all;
    },
    append,
    undo: (garden, entry) => append(garden, [takeBack(garden, entry)]),
    // As the server wrote it, to the byte.
    exportGarden: async (garden) => (await fetched(`${at(garden)}/export`)).text(),
    async importGarden(text) {
      const { garden } = await ask<{ readonly garden: string }>(`${base}/import`, {
        method: 'POST',
        body: text,
      });
      return garden;
    },
    served: {
      paper: (garden, name, query) => `${at(garden)}/print/${name}${asked(query)}`,
      day: {
        progress: (garden) => ask(`${at(garden)}/day`),
        plan: (garden) => ask(`${at(garden)}/day/plan`, { method: 'POST', body: '{}' }),
        step: (garden, name) => ask(`${at(garden)}/day/${name}`, { method: 'POST' }),
        summary: (garden, query) => ask(`${at(garden)}/day/summary${asked(query)}`),
        paper: (garden, name, query) => `${at(garden)}/day/${name}${asked(query)}`,
      },
      async keepPhoto(photo) {
        const sent = { method: 'POST', body: photo, headers: { 'content-type': photo.type } };
        return (await ask<{ readonly photo: string }>(`${base}/photos`, sent)).photo;
      },
      photo: (name) => `${base}/photos/${name}`,
      async arrangementPdf(garden, units, arrangement) {
        const address = `${at(garden)}/print/arrangement.pdf?units=${units}`;
        // The working stays here: the page has no room for it.
        const { derivation: _working, ...told } = arrangement;
        return (await fetched(address, { method: 'POST', body: JSON.stringify({ arrangement: told }) })).blob();
      },
      async calendarFeed(garden) {
        const { path } = await ask<{ readonly path: string }>(`${at(garden)}/calendar`);
        return new URL(path, location.origin).href;
      },
    },
  };
}

const asked = (query: Readonly<Record<string, string>> = {}): string => {
  const text = new URLSearchParams(query).toString();
  return text === '' ? '' : `?${text}`;
};

/** The server gives the invented gardens ids of one fixed moment, at which nobody else made one. */
const SEEDED = Date.parse('2026-11-25T00:00:00Z').toString(16).padStart(12, '0');
const isSeeded = (id: string): boolean => id.replace('-', '').startsWith(SEEDED);

async function ask<T>(address: string, init: RequestInit = {}): Promise<T> {
  return (await (await fetched(address, init)).json()) as T;
}

async function fetched(address: string, init: RequestInit = {}): Promise<Response> {
  let response: Response;
  try {
    response = await fetch(address, {
      ...init,
      headers: {
        accept: 'application/json',
        ...(init.body === undefined ? {} : { 'content-type': 'application/json' }),
        ...init.headers,
      },
    });
  } catch (error) {
    throw new NoAnswer(String(error));
  }
  if (response.ok) return response;
  if (response.status === 404) throw new NotFound(address);
  const details = (await response.json().catch(() => ({}))) as ProblemDetails;
  throw new Refused(details.detail ?? details.title ?? response.statusText, details.problems);
}

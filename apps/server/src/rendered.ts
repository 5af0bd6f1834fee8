import { ok, type Result } from '@sorrel/engine/derivation';
import type { Store } from '@sorrel/store';
import { etagOf } from './http/asset.ts';

/** The text of an answer and its ETag. */
export interface Rendered {
  readonly body: string;
  readonly etag: string;
}

export interface RenderedGarden extends Rendered {
  readonly version: number;
  /** By the id of the place. */
  readonly places: ReadonlyMap<string, Rendered>;
}

/** Gardens kept in memory; each is a few kB. */
const room = 500;

/**
 * Gardens as they are sent. Each request asks the store for the garden's version, so that what another process wrote
 * is seen at once; a garden is put together anew only when that has changed. Requests that arrived together share one
 * question, which is put after the last of them has arrived.
 */
export function createRendered(store: Store): (garden: string) => Promise<Result<RenderedGarden>> {
  const kept = new Map<string, RenderedGarden>();
  const waiting = new Map<string, Promise<Result<RenderedGarden>>>();
  return (garden) => {
    const together = waiting.get(garden);
    if (together !== undefined) return together;
    const soon = new Promise((resolve) => setImmediate(resolve)).then(() => {
      waiting.delete(garden);
      return current(store, kept, garden);
    });
    waiting.set(garden, soon);
    return soon;
  };
}

async function current(
  store: Store,
  kept: Map<string, RenderedGarden>,
  garden: string,
): Promise<Result<RenderedGarden>> {
  let version = await store.version(garden);
  for (;;) {
    if (!version.ok) return version;
    const known = kept.get(garden);
    if (known?.version === version.value) return ok(known);
    const assembled = await store.assemble(garden);
    if (!assembled.ok) return assembled;
    const after = await store.version(garden);
    if (after.ok && after.value === version.value) {
      const fresh = render(garden, version.value, assembled.value);
      kept.delete(garden);
      kept.set(garden, fresh);
      const oldest = kept.keys().next().value;
      if (kept.size > room && oldest !== undefined) kept.delete(oldest);
      return ok(fresh);
    }
    version = after;
  }
}

type Assembled = Extract<Awaited<ReturnType<Store['assemble']>>, { ok: true }>['value'];

function render(garden: string, version: number, { document, from }: Assembled): RenderedGarden {
  const places = new Map<string, Rendered>();
  for (const [index, place] of document.places.entries()) {
    const origin = from.places[index];
    if (origin !== undefined) places.set(origin.id, rendered({ id: origin.id, garden, version, place, from: origin }));
  }
  return { version, places, ...rendered({ id: garden, version, document, from }) };
}

function rendered(value: unknown): Rendered {
  const body = JSON.stringify(value);
  return { body, etag: etagOf(body) };
}

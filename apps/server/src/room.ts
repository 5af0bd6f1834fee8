import type { Store } from '@sorrel/store';
import type { Asset } from './http/asset.ts';
import type { Logger } from './http/log.ts';
import type { Workshop } from './workshop/workshop.ts';

/** What routes work with. */
export interface Room {
  readonly store: Store;
  readonly log: Logger;
  /** Where plans and papers are made. */
  readonly workshop: Workshop;
  readonly webFiles: ReadonlyMap<string, Asset>;
  /** Key that calendar addresses are made with. */
  readonly secret: Uint8Array;
  /** Address people reach this server at, for what is printed; the one asked for when undefined. */
  readonly publicAddress: string | undefined;
  /** The clock: milliseconds since 1970. */
  readonly now: () => number;
  /** Whether the server is on its way out. */
  readonly stopping: () => boolean;
}

/** Today on this computer's calendar, ISO 8601. */
export function todayOf({ now }: Pick<Room, 'now'>): string {
  const day = new Date(now());
  const two = (value: number) => String(value).padStart(2, '0');
  return `${day.getFullYear()}-${two(day.getMonth() + 1)}-${two(day.getDate())}`;
}

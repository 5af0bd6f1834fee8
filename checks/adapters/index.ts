import type { Adapter } from '../adapter.ts';

/** Every adapter, one file a room. */
export const adapters: readonly Adapter[] = [];

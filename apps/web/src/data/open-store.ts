import type { GardenStore } from './garden-store.ts';
import { httpStore } from './http-store.ts';

/** The server's store; a build made with `VITE_STORE=memory` keeps everything in the page instead. */
export async function openStore(): Promise<GardenStore> {
  if (import.meta.env.VITE_STORE !== 'memory') return httpStore();
  const [{ memoryStore }, { demos }] = await Promise.all([import('./memory-store.ts'), import('./demos.ts')]);
  return memoryStore(demos);
}

import { createContext, use } from 'react';
import type { GardenStore } from './garden-store.ts';

const StoreContext = createContext<GardenStore | undefined>(undefined);
export const StoreProvider = StoreContext;

export function useStore(): GardenStore {
  const store = use(StoreContext);
  if (store === undefined) throw new Error('This screen stands outside the store.');
  return store;
}

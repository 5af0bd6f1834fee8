import type { GardenDocument } from '@sorrel/engine/document';

const files = import.meta.glob<GardenDocument>('../../../../demo/*.yaml', { eager: true, import: 'default' });

/** The invented gardens of the folder `demo`. */
export const demos: readonly GardenDocument[] = Object.values(files);

export type { Problem } from '../derivation/problem.ts';
export type { Choice } from './choices.ts';
export { gardenJsonSchema } from './json-schema.ts';
export { type ReadGarden, readGarden } from './read-garden.ts';
export { type RowReader, type RowResult, rowReader } from './row.ts';
export { rowColumns } from './row-columns.ts';
export type { RowDefaults } from './row-draft.ts';
export { type GardenDocument, gardenDocument } from './schema.ts';
export { bufferKinds, phMethods, textures } from './word-lists.ts';

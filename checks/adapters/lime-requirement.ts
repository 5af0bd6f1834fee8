import type { Adapter } from '../adapter.ts';
import { limeBuffers } from './lime-buffers.ts';
import { limeChemistry } from './lime-chemistry.ts';
import { limeTables } from './lime-tables.ts';

/** Cases of the lime requirement: buffers, soil chemistry, tables. */
export const limeRequirement: readonly Adapter[] = [...limeBuffers, ...limeChemistry, ...limeTables];

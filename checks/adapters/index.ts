import type { Adapter } from '../adapter.ts';
import { acidification } from './acidification.ts';
import { dynamics } from './dynamics.ts';
import { lead } from './lead.ts';
import { limeRequirement } from './lime-requirement.ts';
import { materials } from './materials.ts';
import { plan } from './plan.ts';
import { plants } from './plants.ts';
import { soilAndEvidence } from './soil-and-evidence.ts';
import { units } from './units.ts';

/** Every adapter, one file a room. */
export const adapters: readonly Adapter[] = [
  ...materials,
  ...units,
  ...soilAndEvidence,
  ...lead,
  ...limeRequirement,
  ...plants,
  ...acidification,
  ...plan,
  ...dynamics,
];

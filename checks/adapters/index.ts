import type { Adapter } from '../adapter.ts';
import { acidification } from './acidification.ts';
import { dynamics } from './dynamics.ts';
import { lead } from './lead.ts';
import { learning } from './learning.ts';
import { limeCredit } from './lime-credit.ts';
import { limeRequirement } from './lime-requirement.ts';
import { materials } from './materials.ts';
import { nutrients } from './nutrients.ts';
import { plan } from './plan.ts';
import { plants } from './plants.ts';
import { rain } from './rain.ts';
import { soilAndEvidence } from './soil-and-evidence.ts';
import { units } from './units.ts';

/** Every adapter, one file a room. */
export const adapters: readonly Adapter[] = [
  ...materials,
  ...units,
  ...soilAndEvidence,
  ...lead,
  ...limeRequirement,
  ...limeCredit,
  ...plants,
  ...acidification,
  ...plan,
  ...dynamics,
  ...rain,
  ...learning,
  ...nutrients,
];

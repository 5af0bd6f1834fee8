import { type ReadGarden, writePlanReport } from '@sorrel/engine/document';
import type { GardenPlan } from '@sorrel/engine/plan';
import type { Speaker } from './speak.ts';

/** A plan for machines: every number in SI, every message with its code and its sentence. */
export const planJson = (read: ReadGarden, plan: GardenPlan, speaker: Speaker): unknown =>
  writePlanReport(read, plan, speaker.system);

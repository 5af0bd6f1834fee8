import type { GardenPlan } from '../plan/plan-garden.ts';
import type { Recommendation } from '../plan/recommendation.ts';
import type { UnitSystem } from '../units/dimension.ts';
import type { ReadGarden } from './read-garden.ts';
import { learnedForReport, spoken } from './write-report.ts';

/**
 * A plan for machines, as `plan-report.ts` describes it: every number in SI, every message with its code and its sentence.
 *
 * @param read the garden as it was read, with what could not be used of it
 * @param system units the sentences are said in
 */
export function writePlanReport(read: ReadGarden, plan: GardenPlan, system: UnitSystem): Record<string, unknown> {
  return spoken(
    {
      garden: read.garden.name,
      asOf: read.garden.settings.today,
      settings: read.garden.settings,
      places: read.garden.places.map((place, index) => ({
        id: place.id,
        name: place.name,
        kind: place.kind,
        area: place.area,
        depth: place.depth,
        ...(place.volume === undefined ? {} : { volume: place.volume }),
        plants: place.plants.map((plant) => plant.name),
        plan: planOf(plan.recommendations[index]),
      })),
      shopping: plan.shopping,
      problems: read.problems,
      leftOut: read.skipped,
      choices: read.choices,
    },
    system,
  );
}

/** A plan as the report holds it. */
function planOf(plan: Recommendation | undefined): unknown {
  return plan?.learned === undefined ? plan : { ...plan, learned: learnedForReport(plan.learned) };
}

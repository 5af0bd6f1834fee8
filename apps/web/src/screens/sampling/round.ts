import type { Place } from '@sorrel/engine/plan';
import {
  type CorePlan,
  type CoreSpread,
  corePlan,
  coreSpread,
  type SampleGroup,
  type SamplingTime,
  sampleDepth,
  shareSample,
  whenToSample,
} from '@sorrel/engine/sampling';
import type { PlannedPlace } from '../../engine/garden-plan.ts';

/** One mixed sample to take. */
export interface SampleToTake {
  readonly number: number;
  readonly places: readonly PlannedPlace[];
  readonly why: SampleGroup['why'];
  readonly spread: CoreSpread;
  readonly cores: CorePlan;
  /** Metres. */
  readonly depth: number;
  readonly when: SamplingTime;
}

/**
 * The samples of a round over the whole garden.
 *
 * @param halfWidth wanted half width of the 95 % interval of a sample, pH units
 */
export function samplesToTake(
  places: readonly PlannedPlace[],
  halfWidth: number,
  today: string,
): readonly SampleToTake[] {
  const byPlace = new Map(
    places.flatMap((planned): [Place, PlannedPlace][] =>
      planned.place === undefined ? [] : [[planned.place, planned]],
    ),
  );
  return shareSample([...byPlace.keys()]).map(({ places: together, why }, index) => {
    const members = together.flatMap((place) => byPlace.get(place) ?? []);
    const spread = coreSpread(together);
    return {
      number: index + 1,
      places: members,
      why,
      spread,
      cores: corePlan(spread.sd, halfWidth),
      depth: Math.max(...together.map(sampleDepth)),
      when: latest(
        members.flatMap(({ place, plan }) => (place === undefined ? [] : whenToSample(place, today, plan?.retest))),
      ),
    };
  });
}

/** Places that share a sample wait for the one that must wait longest. */
const latest = (times: readonly SamplingTime[]): SamplingTime =>
  times.reduce((best, time) => (time.from > best.from ? time : best));

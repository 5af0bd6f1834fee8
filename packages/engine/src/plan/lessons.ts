import type { Recorder } from '../derivation/derivation.ts';
import { bedRecord } from '../learning/bed-record.ts';
import { checkRecord } from '../learning/check.ts';
import { learn } from '../learning/learn.ts';
import type { Learned } from '../learning/types.ts';
import { gather } from './evidence.ts';
import type { Place, Settings } from './place.ts';
import { standingLayer } from './pot-layer.ts';
import { targetOf } from './target.ts';

/**
 * What the record of a place has taught, also when it is too short to change a dose: the plan itself learns only where
 * something was put on between tests.
 *
 * @returns undefined when no pH is known, nothing tells how much the soil resists, or a figure lies outside the model
 * @source `docs/learning.md`
 */
export function lessons(place: Place, settings: Settings, recorder?: Recorder): Learned | undefined {
  const target = targetOf(place);
  const { learned, layer, reconciled } = gather(place, target, settings, recorder, true);
  if (learned !== undefined || reconciled?.curve === undefined) return learned;
  const record = bedRecord(place, standingLayer(place, layer), reconciled.curve, [], settings.weather, place.yearly);
  const options = { today: settings.today, targetPh: target.aim };
  return checkRecord(record, options).length > 0 ? undefined : learn(record, options, recorder);
}

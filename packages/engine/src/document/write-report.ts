import { en } from '@sorrel/almanac/words';
import type { Message } from '../derivation/message.ts';
import type { Learned } from '../learning/types.ts';
import type { Place } from '../plan/place.ts';
import type { UnitSystem } from '../units/dimension.ts';
import { say } from '../units/say.ts';
import type { ReadGarden } from './read-garden.ts';

/**
 * A report for machines: every number in SI, every message with its code and its sentence.
 *
 * @param of what the report says of each place
 * @param system units the sentences are said in
 */
export function writeReport(
  { garden, problems, skipped, choices }: ReadGarden,
  of: (place: Place, index: number) => Readonly<Record<string, unknown>>,
  system: UnitSystem,
): Record<string, unknown> {
  const places = garden.places.map((place, index) => ({ id: place.id, name: place.name, ...of(place, index) }));
  const asOf = garden.settings.today;
  return spoken({ garden: garden.name, asOf, places, problems, leftOut: skipped, choices }, system);
}

/** What was learned, without the sample it was learned with. */
export function learnedForReport({
  parameters: _,
  sampled: __,
  ...learned
}: Learned): Omit<Learned, 'parameters' | 'sampled'> {
  return learned;
}

const isMessage = (value: object): value is Message =>
  'code' in value && typeof value.code === 'string' && Object.hasOwn(en, value.code) && !('fix' in value);

/** A value with the sentence beside each message in it. */
export function spoken<T>(value: T, system: UnitSystem): T {
  return speak(value, system) as T;
}

function speak(value: unknown, system: UnitSystem): unknown {
  if (Array.isArray(value)) return value.map((each) => speak(each, system));
  if (typeof value !== 'object' || value === null) return value;
  if (isMessage(value)) return { ...value, text: say(value, system) };
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, speak(each, system)]));
}

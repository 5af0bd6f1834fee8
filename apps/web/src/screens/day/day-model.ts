import {
  type CheckVerdict,
  type Doubtful,
  doubtfulReadings,
  dueChecks,
  type MeterAct,
  meterHistory,
} from '@sorrel/engine/day';
import { type Numbered, type ThingOf, thingsOf } from '@sorrel/store/record';

/** A bag of soil with all that is known of it. */
export interface Sample {
  /** Id of its place in the record. */
  readonly id: string;
  readonly code: string;
  readonly content: ThingOf<'place'>['content'];
  /** Readings that stand, the latest last. */
  readonly readings: readonly ThingOf<'reading'>[];
  readonly tests: readonly ThingOf<'test'>[];
  /** The pH it is planned with: of the latest laboratory test, else of the latest reading. */
  readonly ph: number | undefined;
}

export interface Meter {
  readonly name: string;
  /** In the order of the day. */
  readonly checks: readonly CheckVerdict[];
  readonly readings: readonly ThingOf<'reading'>[];
  readonly acts: readonly MeterAct[];
}

export interface Repeat extends Doubtful {
  readonly sample: Sample;
  readonly meter: string;
}

export interface Day {
  /** In the order of check-in. */
  readonly samples: readonly Sample[];
  readonly meters: readonly Meter[];
  readonly repeat: readonly Repeat[];
  /** Neighbourhoods named so far, by alphabet. */
  readonly neighbourhoods: readonly string[];
}

/** The samples, meters and checks of a soil day, from everything written about it. */
export function dayOf(entries: readonly Numbered[]): Day {
  const things = [...thingsOf(entries).values()].filter(({ removed }) => !removed);
  const of = <K extends 'place' | 'reading' | 'test' | 'quality'>(kind: K): readonly ThingOf<K>[] =>
    things.filter((thing) => thing.kind === kind) as unknown as readonly ThingOf<K>[];
  const readings = groupBy(of('reading'), ({ place }) => place ?? '');
  const tests = groupBy(of('test'), ({ place }) => place ?? '');
  const samples = of('place').map((place): Sample => {
    const own = readings.get(place.id) ?? [];
    const tested = tests.get(place.id) ?? [];
    const ph = tested.findLast(({ content }) => content.ph !== undefined)?.content.ph ?? own.at(-1)?.content.ph;
    return {
      id: place.id,
      code: place.content.sample?.code ?? place.content.name,
      content: place.content,
      readings: own,
      tests: tested,
      ph: ph?.value,
    };
  });
  const byId = new Map(samples.map((sample) => [sample.id, sample]));
  // A reading of a sample that was removed is of no use to anybody, but the meter did read it.
  const metered = of('reading').filter(({ content }) => content.meter !== undefined);
  const checks = of('quality');
  const names = [...new Set([...checks, ...metered].map(({ content }) => content.meter ?? ''))];
  const meters = names.map((name): Meter => {
    const own = checks.filter(({ content }) => content.meter === name);
    const verdicts = meterHistory(
      own.map(({ id, number, content: { check, expected, shown } }) => ({ id, order: number, check, expected, shown })),
    );
    const read = metered.filter(({ content }) => content.meter === name);
    const acts = [
      ...verdicts.map(({ order, check, sound }) => ({ order, act: { did: check, sound } as MeterAct })),
      ...read.map(({ number }) => ({ order: number, act: { did: 'reading' } as MeterAct })),
    ].sort((a, b) => a.order - b.order);
    return { name, checks: verdicts, readings: read, acts: acts.map(({ act }) => act) };
  });
  const sampleOfCheck = new Map(checks.map(({ id, place }) => [id, place]));
  const doubtful = doubtfulReadings(
    meters.flatMap(({ name, checks: verdicts }) =>
      verdicts.map(({ id, check, order, sound }) => {
        const sample = sampleOfCheck.get(id);
        return { check, order, sound, meter: name, ...(sample === undefined ? {} : { sample }) };
      }),
    ),
    metered.map(({ id, number, place, content }) => ({
      id,
      order: number,
      meter: content.meter ?? '',
      sample: place ?? '',
    })),
  );
  const readingById = new Map(metered.map((reading) => [reading.id, reading]));
  return {
    samples,
    meters,
    repeat: doubtful.flatMap((each): Repeat[] => {
      const reading = readingById.get(each.id);
      const sample = byId.get(reading?.place ?? '');
      return sample === undefined ? [] : [{ ...each, sample, meter: reading?.content.meter ?? '' }];
    }),
    neighbourhoods: [...new Set(samples.flatMap(({ content }) => content.sample?.neighbourhood ?? []))].sort((a, b) =>
      a.localeCompare(b),
    ),
  };
}

/** Samples that still want a pH. */
export const unread = ({ samples }: Day): readonly Sample[] => samples.filter(({ ph }) => ph === undefined);

/** Checks that stand before the next reading of a meter. */
export const dueOf = (day: Day, meter: string) =>
  dueChecks(day.meters.find(({ name }) => name === meter)?.acts ?? [], unread(day).length + day.repeat.length);

/** How many of the last samples a duplicate is chosen from. */
const LATELY = 10;

/**
 * The sample to read a second time: the earliest of the meter's last ten that was not read twice yet, so that what
 * happened in between shows.
 */
export function duplicateOf(day: Day, meter: string, done: ReadonlySet<string>): Sample | undefined {
  const own = day.meters.find(({ name }) => name === meter)?.readings ?? [];
  const lately = own.slice(-LATELY).map(({ place }) => place ?? '');
  const id = lately.find((each) => !done.has(each)) ?? lately[0];
  return day.samples.find((sample) => sample.id === id);
}

function groupBy<T>(list: readonly T[], key: (each: T) => string): ReadonlyMap<string, readonly T[]> {
  const groups = new Map<string, T[]>();
  for (const each of list) {
    const group = groups.get(key(each));
    if (group === undefined) groups.set(key(each), [each]);
    else group.push(each);
  }
  return groups;
}

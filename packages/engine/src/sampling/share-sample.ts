import type { Message } from '../derivation/message.ts';
import { DETECTABLE } from '../evidence/detectable-change.ts';
import type { Place } from '../plan/place.ts';
import { targetOf } from '../plan/target.ts';

export interface SampleGroup {
  readonly places: readonly Place[];
  /** Why these share a sample, or why the one place has its own. */
  readonly why: Message;
}

/** Aims farther apart than this are different wishes (SORREL). */
const SAME_AIM = 0.3;

/**
 * Which places can share one mixed sample: the same soil, use, depth and history, plants that want the same, and last
 * tests that do not differ by more than the error of a test. What is unknown is never taken for alike. Mixes are
 * sampled alone: beds may be pooled only with one fill, age and history, and the record does not know the fill.
 *
 * @param places in any order
 * @returns every place in one group, groups in the order of their first place
 * @source practice note, work flow step 1 and sampling row `raised bed` (from memory); margins SORREL
 */
export function shareSample(places: readonly Place[]): readonly SampleGroup[] {
  const groups: { readonly places: Place[]; readonly alone: Code | undefined }[] = [];
  for (const place of places) {
    const alone = staysAlone(place);
    const home =
      alone === undefined
        ? groups.find((group) => group.alone === undefined && group.places.every((each) => !difference(each, place)))
        : undefined;
    if (home === undefined) groups.push({ places: [place], alone });
    else home.places.push(place);
  }
  const sampleable = groups.flatMap((group) => (group.alone === undefined ? group.places : []));
  return groups.map(({ places: together, alone }) => ({
    places: together,
    why: { code: together.length > 1 ? 'sampling.alike' : (alone ?? nearestDifference(together[0], sampleable)) },
  }));
}

type Code = Message['code'];

/** From the coarsest difference to the finest. */
const DIFFERENCES = [
  'sampling.alone-different',
  'sampling.alone-history',
  'sampling.alone-target',
  'sampling.alone-ph',
];

/** What parts a place from the one most like it. */
function nearestDifference(place: Place | undefined, others: readonly Place[]): Code {
  let nearest: Code = 'sampling.alone-different';
  for (const other of others) {
    const apart = place === undefined || other === place ? undefined : difference(place, other);
    if (apart !== undefined && DIFFERENCES.indexOf(apart) > DIFFERENCES.indexOf(nearest)) nearest = apart;
  }
  return nearest;
}

function staysAlone({ medium, texture }: Place): Code | undefined {
  if (medium !== 'mineral') return 'sampling.alone-fill';
  return texture?.name === undefined ? 'sampling.alone-soil' : undefined;
}

function difference(a: Place, b: Place): Code | undefined {
  if (
    a.kind !== b.kind ||
    a.situation !== b.situation ||
    a.texture?.name !== b.texture?.name ||
    Math.abs(a.depth - b.depth) > 0.03
  )
    return 'sampling.alone-different';
  if (history(a) !== history(b)) return 'sampling.alone-history';
  const first = targetOf(a);
  const second = targetOf(b);
  if (first.low > second.high || second.low > first.high || Math.abs(first.aim - second.aim) > SAME_AIM)
    return 'sampling.alone-target';
  const before = lastPh(a);
  const after = lastPh(b);
  if (before !== undefined && after !== undefined && Math.abs(before - after) > DETECTABLE) return 'sampling.alone-ph';
  return undefined;
}

const history = ({ applications }: Place): string =>
  applications
    .map(({ date, material, currency }) => `${date} ${material} ${currency.toPrecision(2)}`)
    .sort()
    .join('|');

function lastPh({ tests }: Place): number | undefined {
  const read = tests.filter((test) => test.ph !== undefined);
  return read.reduce((best, test) => (test.date > best.date ? test : best), read[0] ?? { date: '', ph: undefined }).ph
    ?.value;
}

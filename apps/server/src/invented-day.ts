import { dueChecks, judgeCheck, type MeterAct, type MeterCheck, meterHistory } from '@sorrel/engine/day';
import type { Entry } from '@sorrel/store';

const SAMPLES = 300;
const DATE = '2026-11-07';
/** True pH of the bag of reference soil, and of buffer 7 at 20 °C (BUFFER_US). */
const REFERENCE = 6.3;
const BUFFER = 7.02;

/** Invented places, each with its own middle pH and spread, so that the summary has something to show. */
const neighbourhoods = [
  { name: 'Mill Lane', middle: 5.3, spread: 0.5, share: 0.34 },
  { name: 'Hill Road', middle: 6.2, spread: 0.5, share: 0.3 },
  { name: 'Harbour', middle: 7.3, spread: 0.4, share: 0.22 },
  { name: 'Old Orchard', middle: 5.8, spread: 0.6, share: 0.13 },
  // So few that it is not named in the table that is passed on.
  { name: 'Quarry End', middle: 7.7, spread: 0.2, share: 0.01 },
] as const;
const plantings = [
  ['Tomato', 'Lettuce'],
  ['Carrot', 'Beet'],
  ['Potato'],
  ['Blueberry, highbush'],
  ['Cabbage', 'Kale'],
  ['Strawberry'],
] as const;

type Make = (content: Record<string, unknown>, more?: Record<string, unknown>) => Entry;

/**
 * An invented soil day: 300 samples by code alone, read with two meters whose checks follow the plan. One meter drifts
 * for a while and is put right, and what it read meanwhile still has to be repeated. The same every time.
 *
 * @param by who writes it
 * @param at moment of writing
 */
export function inventedDay(by: string, at: string, newId: () => string): readonly Entry[] {
  const random = numbers(20261107);
  const garden = newId();
  const made = (kind: string): Make => {
    return (content, more = {}) =>
      ({ id: newId(), garden, by, at, action: 'add', kind, content, ...more }) as unknown as Entry;
  };
  const [place, reading, quality] = [made('place'), made('reading'), made('quality')];
  const start = {
    ...made('garden')({
      garden: 'Invented soil day with 300 samples',
      note: 'Every figure and every sample of this day was made up.',
      soilDay: { date: DATE, where: 'Invented library' },
      units: 'metric',
    }),
    id: garden,
  } as Entry;
  const bags = Array.from({ length: SAMPLES }, (_, index) => {
    const from = pick(random());
    const lawn = random() < 0.15;
    const planting = plantings[Math.floor(random() * plantings.length)] ?? plantings[0];
    const code = `D${String(index + 1).padStart(3, '0')}`;
    const entry = place({
      name: code,
      sample: { code, neighbourhood: from.name },
      kind: lawn ? 'plot' : 'bed',
      area: `${lawn ? 20 + Math.floor(random() * 60) : 2 + Math.floor(random() * 12)} m2`,
      ...(lawn ? { situation: 'lawn' } : { plants: [...planting] }),
      soil: { texture: random() < 0.5 ? 'loam' : 'sandy loam', organicMatter: `${3 + Math.floor(random() * 4)} %` },
    });
    return { entry, ph: from.middle + from.spread * normal(random) };
  });
  const read = ['Blue', 'Green'].flatMap((meter, which) =>
    readAll(
      bags.filter((_, index) => index % 2 === which),
      // Green creeps away from the truth in the middle of the day.
      (readings) => (which === 1 ? Math.max(0, readings - 50) * 0.006 : 0),
      random,
      (ph, bag) =>
        reading({ date: DATE, by: 'slurry-meter', ph: { value: round(ph), in: 'water-1:1' }, meter }, { place: bag }),
      (check, expected, shown, bag) =>
        quality({ date: DATE, check, meter, expected, shown }, bag === undefined ? {} : { place: bag }),
    ),
  );
  return [start, ...bags.map(({ entry }) => entry), ...read];
}

interface Bag {
  readonly entry: Entry;
  readonly ph: number;
}

/** One meter goes through its bags, each check at its time, and is calibrated when a check is not sound. */
function readAll(
  bags: readonly Bag[],
  drift: (readings: number) => number,
  random: () => number,
  reading: (ph: number, bag: string) => Entry,
  quality: (check: MeterCheck['check'], expected: number, shown: number, bag: string | undefined) => Entry,
): readonly Entry[] {
  const entries: Entry[] = [];
  const acts: MeterAct[] = [];
  const checks: MeterCheck[] = [];
  const shownOf: number[] = [];
  let calibrated = false;
  const off = () => (calibrated ? 0 : drift(shownOf.length));
  const check = (kind: MeterCheck['check']): void => {
    const again = kind === 'duplicate' ? Math.max(0, shownOf.length - 10) : undefined;
    const bag = again === undefined ? undefined : bags[again];
    const expected = kind === 'buffer' ? BUFFER : kind === 'reference' ? REFERENCE : (shownOf[again ?? 0] ?? 0);
    const truth = bag?.ph ?? expected;
    const shown = round(truth + off() + (kind === 'buffer' ? 0.012 : 0.05) * normal(random));
    const entry = quality(kind, expected, shown, bag?.entry.id);
    entries.push(entry);
    checks.push({ id: entry.id, order: acts.length, check: kind, expected, shown });
    const sound = meterHistory(checks).at(-1)?.sound ?? judgeCheck(kind, expected, shown).passed;
    acts.push({ did: kind, sound });
    if (kind !== 'duplicate' && !sound) calibrated = true;
  };
  const checkAll = (left: number): void => {
    for (let due = dueChecks(acts, left); due[0] !== undefined; due = dueChecks(acts, left)) check(due[0]);
  };
  bags.forEach(({ entry, ph }, index) => {
    checkAll(bags.length - index);
    const shown = round(ph + off() + 0.05 * normal(random));
    entries.push(reading(shown, entry.id));
    acts.push({ did: 'reading' });
    shownOf.push(shown);
  });
  checkAll(0);
  return entries;
}

function pick(random: number): (typeof neighbourhoods)[number] {
  let rest = random;
  for (const each of neighbourhoods) {
    rest -= each.share;
    if (rest < 0) return each;
  }
  return neighbourhoods[0];
}

const round = (ph: number): number => Math.round(ph * 100) / 100;

/** A standard normal variate (Box and Muller). */
const normal = (random: () => number): number =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

/** Evenly spread numbers from 0 up to 1, the same for the same seed (mulberry32). */
function numbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

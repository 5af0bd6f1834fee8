import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { type Entry, newId } from '../src/index.ts';

/** Chance from a seed: whole numbers from 0 up to, not including, `below`. */
export function chance(seed: number): (below: number) => number {
  const random = xoroshiro128plus(seed);
  return (below) => (random.next() >>> 0) % below;
}

const idFrom = (seed: number, number: number): string => {
  const next = chance(seed * 100_003 + number);
  return newId(
    Date.UTC(2026, 0, 1) + number,
    Uint8Array.from({ length: 16 }, () => next(256)),
  );
};

export const gardenOf = (seed: number): string => idFrom(seed, 0);
export const placeIdOf = (seed: number, number: number): string => idFrom(seed, number + 1);

/** Entry of that number in the work of one writer, known to the one who writes and the one who checks. */
export function entryOf(seed: number, number: number): Entry {
  const garden = gardenOf(seed);
  const head = { id: idFrom(seed, number), garden, by: 'writer', at: '2026-03-01T09:30:00Z', action: 'add' as const };
  if (number === 0) return { ...head, kind: 'garden', content: { garden: `Garden ${seed}` } };
  const note = 'sour '.repeat(chance(seed + number)(400));
  return { ...head, kind: 'place', content: { name: `Bed ${number}`, note } };
}

/** The work comes in parts of one to three entries; each part is stored as a whole or not at all. */
export function partFrom(seed: number, number: number): readonly number[] {
  const length = number === 0 ? 1 : 1 + chance(seed * 7 + number)(3);
  return Array.from({ length }, (_, index) => number + index);
}

export function photoOf(seed: number, number: number): Uint8Array {
  const next = chance(seed * 31 + number);
  return Uint8Array.from({ length: 1 + next(60_000) }, () => next(256));
}

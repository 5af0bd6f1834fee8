import { readFileSync } from 'node:fs';
import type { Problem, Result } from '@sorrel/engine/derivation';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { expect } from 'vitest';
import { parse } from 'yaml';
import { type Entry, newId, type Store } from '../src/index.ts';

/** Ids and times of a test, the same in every run. */
export function makeIds(seed: number): () => string {
  const random = xoroshiro128plus(seed);
  let now = Date.UTC(2026, 2, 1);
  return () =>
    newId(
      now++,
      Uint8Array.from({ length: 16 }, () => random.next() & 255),
    );
}

export function value<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(result.problems.map((each) => `${each.code} ${each.message}`).join('; '));
  return result.value;
}

/** The problems of a result that must not be well, each with the sentences every problem owes. */
export function problems(result: Result<unknown>): readonly Problem[] {
  if (result.ok) throw new Error('expected problems');
  for (const each of result.problems) {
    expect(each.message).toMatch(/\S.*[.?]$/);
    expect(each.fix).toMatch(/\S.*[.?]$/);
    expect(`${each.message} ${each.fix}`).not.toMatch(/[{}]|undefined/);
  }
  return result.problems;
}

export const codes = (result: Result<unknown>): readonly string[] => problems(result).map((each) => each.code);

export const at = '2026-03-01T09:30:00Z';

/** Makes entries of one garden, each with its own id. */
export function writer(seed: number, by = 'anna') {
  const id = makeIds(seed);
  const garden = id();
  const head = () => ({ id: id(), garden, by, at });
  type Given = Record<string, unknown>;
  return {
    id,
    garden,
    addGarden: (content: Given = { garden: 'Hillside' }) =>
      ({ ...head(), id: garden, action: 'add', kind: 'garden', content }) as unknown as Entry,
    add: (kind: string, content: Given, place?: string) =>
      ({ ...head(), action: 'add', kind, ...(place === undefined ? {} : { place }), content }) as unknown as Entry,
    correct: (thing: string, kind: string, content: Given, more: Given = {}) =>
      ({ ...head(), action: 'correct', thing, kind, content, ...more }) as unknown as Entry,
    remove: (thing: string, more: Given = {}) => ({ ...head(), action: 'remove', thing, ...more }) as unknown as Entry,
    undoOf: (entry: string) => ({ ...head(), action: 'undo', entry }) as unknown as Entry,
    undo: (person = by) => ({ id: id(), garden, by: person, at }),
  };
}

/** A garden with one bed. */
export async function bedOf(store: Store, seed: number) {
  const write = writer(seed);
  const bed = write.add('place', { name: 'Bed 1', area: '48 sq ft', plants: ['blueberry'] });
  value(await store.append([write.addGarden(), bed]));
  return { ...write, bed: bed.id };
}

const root = new URL('../../../', import.meta.url);
export const demo = (name: string): Record<string, unknown> =>
  parse(readFileSync(new URL(`demo/${name}.yaml`, root), 'utf8'));
export const demos = ['limy-clay-hard-water', 'rooftop-containers', 'sour-ground-heavy-rain'] as const;

/** The smallest PNG there is to keep: eight bytes of signature (PNG specification, 5.2) and what a test adds. */
export const png = (...more: number[]) => Uint8Array.from([137, 80, 78, 71, 13, 10, 26, 10, ...more]);

import { phMethods } from '@sorrel/engine/document';
import { isUsed, meaningRow, NOT_USED } from '../columns/meanings.ts';
import { type Guess, IN_CELLS } from '../columns/recognise.ts';
import type { MappedColumn } from './schema.ts';

/** Meanings that fill the same place of a soil test, the one to be preferred first. */
const FIRST: Readonly<Record<string, readonly string[]>> = {
  date: ['date-sampled', 'date-received', 'date-reported'],
  buffer_ph: ['buffer-ph', 'lime-index'],
};

/** A pH in water before one in salt: targets are told in water. */
const SALTS: readonly (string | undefined)[] = ['cacl2-0.01M', 'kcl-1M'];

/** How good a column is for the place it wants; the best one gets it. */
function rank(guess: Guess): number {
  const to = meaningRow(guess.means)?.column ?? '';
  const order = FIRST[to]?.indexOf(guess.means) ?? 0;
  const salt = guess.means === 'ph' ? SALTS.indexOf(guess.method) + 1 : 0;
  const empty = guess.reason === 'empty' ? 2 : 0;
  const unit = guess.unit === undefined ? 0.5 : 0;
  return 10 * order + 5 * salt + 100 * empty + unit + (1 - guess.confidence);
}

/**
 * Settles which columns are used when several say the same, and lets the laboratory's number stand in for a missing
 * name.
 */
export function settle(guesses: readonly Guess[]): Guess[] {
  const named = guesses.some((guess) => guess.means === 'place' && guess.reason !== 'empty');
  const stood: Guess[] = guesses.map((guess) => {
    if (guess.means !== 'laboratory-number' || guess.reason === 'remembered' || guess.reason === 'answered')
      return guess;
    return named ? { ...guess, reason: 'not-needed' } : { ...guess, means: 'place' };
  });
  const best = new Map<string, number>();
  for (const [at, guess] of stood.entries()) {
    const to = meaningRow(guess.means)?.column;
    if (to === undefined) continue;
    const known = best.get(to);
    if (known === undefined || rank(guess) < rank(stood[known] as Guess)) best.set(to, at);
  }
  return stood.map((guess, at) => {
    const to = meaningRow(guess.means)?.column;
    return to === undefined || best.get(to) === at ? guess : { ...guess, means: NOT_USED, reason: 'same-again' };
  });
}

/** What a guess becomes in the sender's mapping. */
export function columnOf(title: string, guess: Guess): MappedColumn {
  const { means, unit, method, buffer, oxide } = guess;
  if (!isUsed(means)) return { title, means };
  const known = phMethods.find((each) => each === method);
  return {
    title,
    means,
    ...(unit === undefined ? {} : { unit }),
    ...(known === undefined ? {} : { method: known }),
    ...(buffer === undefined ? {} : { buffer: buffer as NonNullable<MappedColumn['buffer']> }),
    ...(oxide === undefined ? {} : { oxide: oxide as NonNullable<MappedColumn['oxide']> }),
  };
}

export { IN_CELLS };

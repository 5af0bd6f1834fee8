import type { Problem, Result } from '@sorrel/engine/derivation';
import { type ProblemKind, Refusal } from './problem-details.ts';

/** What each problem of the store means on the web; what is not listed is a wrong entry. */
const kinds: Readonly<Record<string, ProblemKind>> = {
  'store.no-garden': 'not-found',
  'store.same-id': 'conflict',
  'store.changed-meanwhile': 'conflict',
  'store.garden-once': 'conflict',
  'store.taken-back': 'conflict',
  'store.not-yours': 'conflict',
  'store.nothing-to-undo': 'conflict',
  'store.busy': 'no-database',
  'store.unreachable': 'no-database',
  'store.refused': 'no-database',
  'store.disk-full': 'no-database',
  'store.write-failed': 'no-database',
  'store.read-only': 'no-database',
  'store.cannot-open': 'no-database',
  'store.damaged': 'no-database',
  'store.photo-type': 'wrong-type',
};

export const kindOf = (problems: readonly Problem[]): ProblemKind => kinds[problems[0]?.code ?? ''] ?? 'bad-entry';

/** The value of a result of the store; a refusal is thrown for `onError` to answer. */
export function orRefuse<T>(result: Result<T>): T {
  if (result.ok) return result.value;
  throw refusalOf(result.problems);
}

/** Where the database is belongs to the log of the server, not to those who use it. */
export function refusalOf(problems: readonly Problem[]): Refusal {
  const kind = kindOf(problems);
  const first = problems[0];
  const detail = first === undefined ? '' : `${first.message} ${first.fix}`;
  return new Refusal(kind, detail, problems);
}

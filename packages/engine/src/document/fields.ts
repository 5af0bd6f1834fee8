import type * as z from 'zod';
import type { Problem } from '../derivation/problem.ts';
import { unknownField } from './field-problems.ts';
import { problemOf } from './issue.ts';
import { type Path, pathText, valueAt } from './path.ts';
import { problem, shown } from './report.ts';

/** Where problems of one part of the document go. `place` is the name said with each of them. */
export interface Report {
  readonly place?: string | undefined;
  readonly problems: Problem[];
}

type Shape = Readonly<Record<string, z.ZodType>>;
export type FieldsOf<S extends Shape> = { [K in keyof S]?: Exclude<z.output<S[K]>, undefined> };

/**
 * Checks an entry field by field, so that one bad field does not hide the good ones.
 * Unknown fields are reported with the nearest known one and not used.
 *
 * @returns the good fields, and the names of those that were wrong or missing
 */
export function readFields<S extends Shape>(
  shape: S,
  typed: unknown,
  at: Path,
  report: Report,
): { readonly fields: FieldsOf<S>; readonly bad: ReadonlySet<string> } {
  const fields: Record<string, unknown> = {};
  const bad = new Set<string>();
  if (typeof typed !== 'object' || typed === null || Array.isArray(typed)) {
    report.problems.push(
      problem('document.no-group', { place: report.place, field: pathText(at) }, typed, {
        found: shown(typed),
        known: Object.keys(shape).join(', '),
      }),
    );
    bad.add('');
    return { fields: fields as FieldsOf<S>, bad };
  }
  const record = typed as Record<string, unknown>;
  for (const key of Object.keys(record))
    if (!Object.hasOwn(shape, key))
      report.problems.push(unknownField(key, record[key], Object.keys(shape), at, report.place));
  for (const key of Object.keys(shape)) {
    const schema = shape[key];
    if (schema === undefined) continue;
    const value = checked(schema, record[key], [...at, key], report);
    if (value === wrong) bad.add(key);
    else if (value !== undefined) fields[key] = value;
  }
  return { fields: fields as FieldsOf<S>, bad };
}

const wrong = Symbol('wrong');

function checked(schema: z.ZodType, typed: unknown, at: Path, report: Report): unknown {
  const result = schema.safeParse(typed);
  if (result.success) return result.data;
  for (const issue of result.error.issues) report.problems.push(...problemOf(issue, schema, typed, at, report.place));
  const unknown = result.error.issues.filter((issue) => issue.code === 'unrecognized_keys');
  if (unknown.length < result.error.issues.length) return wrong;
  const rest = structuredClone(typed);
  for (const issue of unknown) {
    const owner = valueAt(rest, issue.path) as Record<string, unknown>;
    for (const key of issue.keys) delete owner[key];
  }
  const again = schema.safeParse(rest);
  return again.success ? again.data : wrong;
}

/** The items of a list, each still to be checked; a single item that is no list is reported. */
export function readList(typed: unknown, at: Path, report: Report): readonly unknown[] {
  if (typed === undefined || typed === null) return [];
  if (Array.isArray(typed)) return typed;
  report.problems.push(
    problem('document.no-list', { place: report.place, field: pathText(at) }, typed, { found: shown(typed) }),
  );
  return [];
}

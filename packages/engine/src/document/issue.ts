import * as z from 'zod';
import type { Problem } from '../derivation/problem.ts';
import { missing, notAChoice, unknownField, type Where } from './field-problems.ts';
import { type Path, pathText, valueAt } from './path.ts';
import { problem, shown } from './report.ts';

const unwrap = (schema: z.ZodType | undefined): z.ZodType | undefined =>
  schema instanceof z.ZodOptional ? unwrap(schema.unwrap() as z.ZodType) : schema;

function schemaAt(root: z.ZodType, path: Path): z.ZodType | undefined {
  let schema = unwrap(root);
  for (const part of path) {
    if (schema instanceof z.ZodObject) schema = unwrap(schema.shape[String(part)] as z.ZodType | undefined);
    else if (schema instanceof z.ZodArray) schema = unwrap(schema.element as z.ZodType);
    else return undefined;
  }
  return schema;
}

/** What to write instead, from the examples in the schema itself. */
function exampleOf(schema: z.ZodType | undefined): string | undefined {
  const examples = schema?.meta()?.examples;
  return Array.isArray(examples)
    ? examples.filter((each) => typeof each === 'string').join(' or ') || undefined
    : undefined;
}

/**
 * One fault found by the schema, told to a gardener.
 *
 * @param issue the fault, its path counted from `root`
 * @param root schema of the entry
 * @param typed the entry as it was written
 * @param at path of the entry inside its place
 */
export function problemOf(
  issue: z.core.$ZodIssue,
  root: z.ZodType,
  typed: unknown,
  at: Path,
  place: string | undefined,
): Problem[] {
  const field = pathText([...at, ...issue.path]);
  const where = { place, field };
  const value = valueAt(typed, issue.path);
  const schema = schemaAt(root, issue.path);
  const example = exampleOf(schema);
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys.map((key) =>
        unknownField(
          key,
          valueAt(value, [key]),
          schema instanceof z.ZodObject ? Object.keys(schema.shape) : [],
          [...at, ...issue.path],
          place,
        ),
      );
    case 'invalid_value':
      return [notAChoice(where, value, issue.values.map(String))];
    case 'invalid_union': {
      if (value === undefined) return [missing(where, value, example)];
      return [problem('document.not-yes-or-no', where, value, { found: shown(value) })];
    }
    case 'invalid_format':
      return issue.format === 'date'
        ? [problem('document.not-a-date', where, value)]
        : [problem('document.not-a-text', where, value, { found: shown(value), example: example ?? '10 cm' })];
    case 'too_small':
    case 'too_big':
      return [outOfRange(issue, where, value, schema)];
    default:
      return [wrongType(issue, where, value, schema, example)];
  }
}

function outOfRange(
  issue: z.core.$ZodIssueTooSmall | z.core.$ZodIssueTooBig,
  where: Where,
  value: unknown,
  schema: z.ZodType | undefined,
): Problem {
  if (issue.origin === 'array')
    return problem('document.wrong-count', where, value, {
      wanted: String(issue.code === 'too_small' ? issue.minimum : issue.maximum),
      found: Array.isArray(value) ? value.length : 0,
    });
  if (schema instanceof z.ZodNumber) {
    if (schema.minValue === 0 && schema.maxValue === 14) return problem('document.ph-range', where, value);
    return problem('document.number-range', where, value, { low: schema.minValue ?? 0, high: schema.maxValue ?? 0 });
  }
  return problem('document.not-a-name', where, value, { found: shown(value) });
}

function wrongType(
  issue: z.core.$ZodIssue,
  where: Where,
  value: unknown,
  schema: z.ZodType | undefined,
  example: string | undefined,
): Problem {
  if (value === undefined || value === null) return missing(where, value, example);
  const expected = issue.code === 'invalid_type' ? issue.expected : '';
  const found = typeof value === 'string' ? `the words "${shown(value)}"` : shown(value);
  if (expected === 'number' || expected === 'int')
    return problem('document.not-a-number', where, value, { found, example: example ?? '5.4' });
  if (expected === 'array') return problem('document.no-list', where, value, { found });
  if (schema instanceof z.ZodObject)
    return problem('document.no-group', where, value, { found, known: Object.keys(schema.shape).join(', ') });
  if (example !== undefined) return problem('document.not-a-text', where, value, { found, example });
  return problem('document.not-a-name', where, value, { found });
}

import type { Problem } from '@sorrel/engine/derivation';
import type * as z from 'zod';

/** `entries[0].id` from its parts. */
const pathText = (path: readonly PropertyKey[]): string =>
  path.reduce<string>(
    (text, part) =>
      typeof part === 'number' ? `${text}[${part}]` : text === '' ? String(part) : `${text}.${String(part)}`,
    '',
  );

/** Long or deep values are not sent back whole. */
function shown(value: unknown): unknown {
  const text = typeof value === 'string' ? value : JSON.stringify(value);
  return text !== undefined && text.length > 200 ? `${text.slice(0, 200)}…` : value;
}

function valueAt(value: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (at, part) => (typeof at === 'object' && at !== null ? (at as Record<PropertyKey, unknown>)[part] : undefined),
    value,
  );
}

/** What a schema found wrong with a request, field by field. */
export function entryProblems(error: z.core.$ZodError, sent: unknown): Problem[] {
  return error.issues.map((issue) => ({
    code: `server.${issue.code.replaceAll('_', '-')}`,
    field: pathText(issue.path),
    value: shown(valueAt(sent, issue.path)),
    message: `${issue.message}.`,
    fix: fixFor(issue),
  }));
}

function fixFor(issue: z.core.$ZodIssue): string {
  switch (issue.code) {
    case 'unrecognized_keys':
      return `Leave out ${issue.keys.join(', ')}.`;
    case 'invalid_value':
      return `Use one of: ${issue.values.map(String).join(', ')}.`;
    case 'invalid_type':
      return `Give a value of the type ${issue.expected} here.`;
    default:
      return 'See the description of this field at /api/openapi.json.';
  }
}

import { fail, ok, type Result } from '@sorrel/engine/derivation';
import { problemOf } from '@sorrel/engine/document';
import type * as z from 'zod';
import { problem } from '../problems.ts';
import { actions, allKinds, type Entry, type Kind, variants } from './entry.ts';

/**
 * Checks what was sent against the schema of its action and kind, and says each fault at its field.
 *
 * @param typed what the JSON of the entry holds
 * @returns the entry as it was sent, its quantities and the order of its fields untouched
 */
export function checkEntry(typed: unknown): Result<Entry> {
  if (typeof typed !== 'object' || typed === null || Array.isArray(typed))
    return fail(problem('store.not-an-entry', 'entry', typed, { found: shown(typed), wanted: 'a group of fields' }));
  const { action, kind } = typed as { readonly action?: unknown; readonly kind?: unknown };
  const schema = schemaOf(action, kind);
  if (schema === undefined) {
    const known = (actions as readonly unknown[]).includes(action);
    const [field, value, words] = known ? ['kind', kind, allKinds] : ['action', action, actions];
    return fail(problem('store.not-an-entry', field, value, { found: shown(value), wanted: words.join(', ') }));
  }
  const checked = schema.safeParse(typed);
  if (checked.success) return ok(JSON.parse(JSON.stringify(typed)) as Entry);
  return fail(...checked.error.issues.flatMap((issue) => problemOf(issue, schema, typed, [], undefined)));
}

function schemaOf(action: unknown, kind: unknown): z.ZodType | undefined {
  if (action === 'remove' || action === 'undo') return variants[action];
  if (action !== 'add' && action !== 'correct') return undefined;
  return (allKinds as readonly unknown[]).includes(kind) ? variants[action][kind as Kind] : undefined;
}

const shown = (value: unknown): string =>
  value === undefined || value === null
    ? 'missing'
    : typeof value === 'object'
      ? 'a group or a list'
      : `"${String(value).slice(0, 60)}"`;

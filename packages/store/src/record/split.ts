import { fail, ok, type Problem, type Result } from '@sorrel/engine/derivation';
import { checkEntry } from '../entry/check-entry.ts';
import type { Entry } from '../entry/entry.ts';
import { problem } from '../problems.ts';

/**
 * Takes a garden document apart into the entries that would have made it: the way back from `assemble`.
 *
 * @param document a garden document, as its JSON or YAML text holds it
 * @param writer who is said to have written it and when, and where ids come from
 * @returns entries for `append`, the garden's first; or what the schema finds wrong, with the name of the place
 */
export function entriesFromDocument(
  document: unknown,
  writer: { readonly by: string; readonly at: string; readonly newId: () => string },
): Result<Entry[]> {
  if (!isGroup(document))
    return fail(problem('store.not-an-export', 'garden', document, { reason: 'it is not a garden document' }));
  const { by, at, newId } = writer;
  const { places, materials, ...content } = document;
  const garden = newId();
  const entries: Entry[] = [];
  const problems: Problem[] = [];
  const put = (kind: string, of: unknown, where: { id?: string; place?: string; name?: string } = {}): string => {
    const id = where.id ?? newId();
    const place = where.place === undefined ? {} : { place: where.place };
    const checked = checkEntry({ id, garden, by, at, action: 'add', kind, ...place, content: of });
    if (checked.ok) entries.push(checked.value);
    else
      problems.push(
        ...checked.problems.map((each) => (where.name === undefined ? each : { ...each, place: where.name })),
      );
    return id;
  };
  put('garden', content, { id: garden });
  for (const material of listOf(materials)) put('material', material);
  for (const each of listOf(places)) {
    if (!isGroup(each)) {
      put('place', each);
      continue;
    }
    const { tests, applications, ...head } = each;
    const name = typeof head.name === 'string' ? { name: head.name } : {};
    const place = put('place', head, name);
    for (const test of listOf(tests)) put('test', test, { place, ...name });
    for (const application of listOf(applications)) put('application', application, { place, ...name });
  }
  return problems.length > 0 ? fail(...problems) : ok(entries);
}

const isGroup = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** What is no list is handed on as one item, so that its own check says what is wrong with it. */
const listOf = (value: unknown): readonly unknown[] =>
  value === undefined ? [] : Array.isArray(value) ? value : [value];

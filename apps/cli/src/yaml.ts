import { CORE_SCHEMA, load } from 'js-yaml';

/** Signs that stand for something else: anchors and aliases can multiply, tags change types, digits may hold a line. */
const UNUSUAL = /[&*!]|<<|\d_|0[bB]\d/;

/**
 * What a YAML text holds. The quick reader does for what gardeners write; everything unusual, and every fault, goes to
 * the full one, which knows the whole of YAML 1.2 and tells line and column.
 *
 * @throws Error with the line of the fault
 */
export async function parseYaml(text: string): Promise<unknown> {
  if (!UNUSUAL.test(text))
    try {
      const value = load(text, { schema: CORE_SCHEMA });
      if (named(value)) return value ?? undefined;
    } catch {
      // The full reader below says what is wrong, in its own words and with the line.
    }
  const { parseDocument } = await import('yaml');
  const parsed = parseDocument(text, { prettyErrors: true });
  const fault = parsed.errors[0];
  if (fault !== undefined) throw new Error(fault.message.trimEnd());
  return parsed.toJS({ maxAliasCount: 100 }) ?? undefined;
}

/** Whether every field is named by a word: the readers differ on fields named by nothing or by a figure. */
function named(value: unknown): boolean {
  if (typeof value !== 'object' || value === null) return true;
  if (Array.isArray(value)) return value.every(named);
  return Object.entries(value).every(([key, each]) => key !== 'null' && /\p{L}/u.test(key) && named(each));
}

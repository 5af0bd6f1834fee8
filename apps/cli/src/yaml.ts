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
      return load(text, { schema: CORE_SCHEMA }) ?? undefined;
    } catch {
      // The full reader below says what is wrong, in its own words and with the line.
    }
  const { parseDocument } = await import('yaml');
  const parsed = parseDocument(text, { prettyErrors: true });
  const fault = parsed.errors[0];
  if (fault !== undefined) throw new Error(fault.message.trimEnd());
  return parsed.toJS({ maxAliasCount: 100 }) ?? undefined;
}

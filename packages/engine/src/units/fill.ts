const slot = /\{([a-zA-Z][a-zA-Z0-9]*)\}/g;

/** The names of a template's slots, in order of appearance, each once. */
export const slots = (template: string): string[] => [
  ...new Set([...template.matchAll(slot)].map((match) => match[1] ?? '')),
];

/** A template cut at its slots: text, name, text, name, …, text. Cut once, because the same few are said thousands of times. */
const cuts = new Map<string, readonly string[]>();

/**
 * Puts values into the `{name}` slots of a template.
 *
 * @throws RangeError when a slot has no value: a template and its message that disagree are a mistake in the program
 */
export function fill(template: string, wordFor: (name: string) => string | undefined): string {
  let parts = cuts.get(template);
  if (parts === undefined) {
    parts = template.split(slot);
    cuts.set(template, parts);
  }
  let text = parts[0] ?? '';
  for (let i = 1; i < parts.length; i += 2) {
    const name = parts[i] ?? '';
    const value = wordFor(name);
    if (value === undefined) throw new RangeError(`“${template}” needs a value for {${name}}`);
    text += value + (parts[i + 1] ?? '');
  }
  return text;
}

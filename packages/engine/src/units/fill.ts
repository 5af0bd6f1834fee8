const slot = /\{([a-zA-Z][a-zA-Z0-9]*)\}/g;

/** The names of a template's slots, in order of appearance, each once. */
export const slots = (template: string): string[] => [
  ...new Set([...template.matchAll(slot)].map((match) => match[1] ?? '')),
];

/**
 * Puts values into the `{name}` slots of a template.
 *
 * @throws RangeError when a slot has no value: a template and its message that disagree are a mistake in the program
 */
export function fill(template: string, wordFor: (name: string) => string | undefined): string {
  return template.replace(slot, (_, name: string) => {
    const value = wordFor(name);
    if (value === undefined) throw new RangeError(`“${template}” needs a value for {${name}}`);
    return value;
  });
}

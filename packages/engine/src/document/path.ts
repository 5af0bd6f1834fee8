export type Path = readonly PropertyKey[];

/** A path as a person would point at it: `tests[0].ph.value`. */
export function pathText(path: Path): string {
  let text = '';
  for (const part of path)
    text += typeof part === 'number' ? `[${part}]` : text === '' ? String(part) : `.${String(part)}`;
  return text;
}

/** The value at a path of what was typed. */
export function valueAt(root: unknown, path: Path): unknown {
  let value = root;
  for (const part of path) {
    if (typeof value !== 'object' || value === null) return undefined;
    value = (value as Record<PropertyKey, unknown>)[part];
  }
  return value;
}

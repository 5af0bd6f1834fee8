/**
 * One text for one value: JSON without spaces, keys in the order of their UTF-16 code units. Two entries say the same
 * when their canonical texts are equal.
 */
export function canonical(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonical).join(',')}]`;
  if (typeof value === 'object' && value !== null) {
    const record = value as Readonly<Record<string, unknown>>;
    const written = Object.keys(record)
      .filter((key) => record[key] !== undefined)
      .sort()
      .map((key) => `${JSON.stringify(key)}:${canonical(record[key])}`);
    return `{${written.join(',')}}`;
  }
  return JSON.stringify(value) ?? 'null';
}
